package thalweg.house;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What one source file must look like; each finding is a sentence with the file and the line. */
final class ShapeRules {

    /** The longest a file may be [lines]. */
    static final int LONGEST_FILE = 400;

    private static final Pattern EMPTY_NAME = Pattern.compile(".+(Manager|Helper|Utils?|Impl)");

    private static final Pattern ACCESSOR = Pattern.compile("get\\p{Lu}.*");

    /** Composed, so that this file does not hold the words it looks for. */
    private static final Pattern UNFINISHED = Pattern.compile("\\b(" + "TO" + "DO|FIX" + "ME|XX" + "X)\\b");

    private static final List<String> STATEMENT_STARTS = List.of(
            "select .*\\bfrom ",
            "insert (or \\w+ )?into ",
            "update \\w+ set ",
            "delete from ",
            "create (temp |unique |virtual )?(table|index|view|trigger) ",
            "(alter|drop) (table|index|view|trigger) ",
            "(pragma|vacuum|begin immediate|with recursive)\\b");

    private static final Pattern STATEMENT = Pattern.compile(String.join("|", STATEMENT_STARTS));

    private ShapeRules() {}

    /** Keywords are all small or all capital letters; one capital begins a sentence for people. */
    private static boolean isStatement(String literal) {
        String text = literal.strip().replaceAll("\\s+", " ");
        String keyword = text.replaceFirst(" .*", "");
        boolean oneCase =
                keyword.equals(keyword.toLowerCase(Locale.ROOT)) || keyword.equals(keyword.toUpperCase(Locale.ROOT));
        return oneCase && STATEMENT.matcher(text.toLowerCase(Locale.ROOT)).lookingAt();
    }

    /** Everything in the file that is not as it should be; empty for a good file. */
    static List<String> findings(JavaSource source) {
        List<String> findings = new ArrayList<>();
        if (source.lines().size() > LONGEST_FILE) {
            findings.add(source.at(
                    LONGEST_FILE + 1,
                    "a file has at most " + LONGEST_FILE + " lines, this one has "
                            + source.lines().size() + "; split off a part that has a name"));
        }
        source.unit().getTypeDecls().stream()
                .filter(ClassTree.class::isInstance)
                .skip(1)
                .forEach(type -> findings.add(source.at(type, "one top-level type a file")));
        for (int i = 0; i < source.lines().size(); i++) {
            if (UNFINISHED.matcher(source.lines().get(i)).find()) {
                findings.add(source.at(i + 1, "unfinished work belongs in no file"));
            }
        }
        new Scanner(source, findings).scan(source.unit(), null);
        return findings;
    }

    private static final class Scanner extends TreeScanner<Object, Object> {

        private final JavaSource source;
        private final List<String> findings;

        Scanner(JavaSource source, List<String> findings) {
            this.source = source;
            this.findings = findings;
        }

        @Override
        public Object visitClass(ClassTree type, Object nothing) {
            if (EMPTY_NAME.matcher(type.getSimpleName()).matches()) {
                findings.add(source.at(type, "the name " + type.getSimpleName() + " does not say what it is"));
            }
            return super.visitClass(type, nothing);
        }

        @Override
        public Object visitMethod(MethodTree method, Object nothing) {
            boolean inherited = method.getModifiers().getAnnotations().stream().anyMatch(a -> isNamed(a, "Override"));
            if (ACCESSOR.matcher(method.getName()).matches()
                    && method.getParameters().isEmpty()
                    && !inherited) {
                findings.add(source.at(method, "an accessor has no get before its name: " + method.getName()));
            }
            return super.visitMethod(method, nothing);
        }

        @Override
        public Object visitAnnotation(AnnotationTree annotation, Object nothing) {
            if (isNamed(annotation, "Disabled")) {
                findings.add(source.at(annotation, "a test that does not run is no test"));
            }
            if (isNamed(annotation, "SuppressWarnings") && !isExplained(annotation)) {
                findings.add(source.at(annotation, "the line above says why a warning is suppressed"));
            }
            return super.visitAnnotation(annotation, nothing);
        }

        @Override
        public Object visitLiteral(LiteralTree literal, Object nothing) {
            if (literal.getKind() == Tree.Kind.STRING_LITERAL
                    && !source.name().contains("/thalweg/storage/")
                    && isStatement(String.valueOf(literal.getValue()))) {
                findings.add(source.at(literal, "only storage says SQL"));
            }
            return super.visitLiteral(literal, nothing);
        }

        private boolean isExplained(AnnotationTree annotation) {
            int above = source.lineOf(annotation) - 2;
            return above >= 0 && source.lines().get(above).strip().startsWith("//");
        }

        private static boolean isNamed(AnnotationTree annotation, String name) {
            String type = annotation.getAnnotationType().toString();
            return type.equals(name) || type.endsWith("." + name);
        }
    }
}
