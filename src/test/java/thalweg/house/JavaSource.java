package thalweg.house;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * One source file, as lines and as the compiler's own syntax tree.
 *
 * @param name path below the checkout, with slashes
 * @param lines of the file, without line ends
 * @param unit what the compiler's parser made of it
 * @param trees finds places in the unit
 */
record JavaSource(String name, List<String> lines, CompilationUnitTree unit, Trees trees) {

    JavaSource {
        lines = List.copyOf(lines);
    }

    /** All Java sources below a folder of the checkout, in the order of their names. */
    static List<JavaSource> under(String folder) {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .map(JavaSource::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JavaSource read(Path file) {
        try {
            return of(file.toString().replace('\\', '/'), Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Parses a source.
     *
     * @param name path below the checkout, with slashes
     * @param text the whole file
     */
    static JavaSource of(String name, String text) {
        JavaFileObject file = new SimpleJavaFileObject(URI.create("text:///" + name), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
        JavacTask task = (JavacTask) ToolProvider.getSystemJavaCompiler()
                .getTask(null, null, problem -> {}, List.of("-proc:none"), null, List.of(file));
        try {
            CompilationUnitTree unit = task.parse().iterator().next();
            return new JavaSource(name, text.lines().toList(), unit, Trees.instance(task));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a piece of the file begins: 1 for the first line. */
    int lineOf(Tree tree) {
        long position = trees.getSourcePositions().getStartPosition(unit, tree);
        return (int) unit.getLineMap().getLineNumber(position);
    }

    /** A finding that names the file and the line of a piece of it. */
    String at(Tree tree, String sentence) {
        return at(lineOf(tree), sentence);
    }

    /** A finding that names the file and a line. */
    String at(int line, String sentence) {
        return name + ":" + line + ": " + sentence;
    }

    /** Whether the text occurs anywhere, comments included. */
    boolean mentions(String text) {
        return lines.stream().anyMatch(line -> line.contains(text));
    }
}
