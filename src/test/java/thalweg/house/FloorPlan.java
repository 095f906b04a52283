package thalweg.house;

import com.sun.source.tree.ImportTree;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which package may import which: a table, one line a package, lowest first.
 *
 * <p>Columns: package, {@code pure} or nothing, what it may import, libraries that only it may use. A package is named
 * below the root and the root itself is {@code .}. Two words stand for many names: {@code above} is every package of an
 * earlier line, {@code below-screen} every pure package of an earlier line that is no part of the screen. Only earlier
 * lines can be named, so there are no cycles.
 */
final class FloorPlan {

    /** What any package may use beside its line: the JDK and the annotations that say what may be null. */
    private static final List<String> FOR_EVERYBODY = List.of("java", "javax", "jdk", "org.jspecify");

    /** Templates are compiled into a package below the one that fills them, which answers for their imports. */
    private static final String GENERATED = ".templates";

    private record Line(boolean pure, Set<String> imports, List<String> homeOf) {}

    private final String root;
    private final Map<String, Line> lines = new LinkedHashMap<>();

    private FloorPlan(String root) {
        this.root = root;
    }

    /**
     * Reads the table.
     *
     * @param root package above all named ones
     * @param table lines of four columns, parted by bars
     */
    static FloorPlan of(String root, String table) {
        FloorPlan plan = new FloorPlan(root);
        table.lines().filter(line -> !line.isBlank()).forEach(plan::add);
        return plan;
    }

    private void add(String text) {
        List<String> columns =
                Stream.of(text.split("\\|", -1)).map(String::strip).toList();
        if (columns.size() != 4 || !Set.of("", "pure").contains(columns.get(1))) {
            throw new IllegalArgumentException("A line has the columns package, pure, imports and libraries: " + text);
        }
        Set<String> imports = new LinkedHashSet<>();
        words(columns.get(2)).forEach(name -> imports.addAll(expanded(name, text)));
        Line line = new Line(!columns.get(1).isEmpty(), Set.copyOf(imports), words(columns.get(3)));
        if (lines.putIfAbsent(columns.get(0), line) != null) {
            throw new IllegalArgumentException("A package has one line: " + text);
        }
    }

    private Set<String> expanded(String name, String text) {
        if (name.equals("above")) {
            return Set.copyOf(lines.keySet());
        }
        if (name.equals("below-screen")) {
            return lines.keySet().stream()
                    .filter(earlier -> isPure(earlier) && !earlier.startsWith("tui."))
                    .collect(Collectors.toUnmodifiableSet());
        }
        if (!lines.containsKey(name)) {
            throw new IllegalArgumentException(
                    "Only packages of earlier lines can be named, not " + name + ": " + text);
        }
        return Set.of(name);
    }

    private static List<String> words(String column) {
        return Stream.of(column.split(" +")).filter(word -> !word.isEmpty()).toList();
    }

    private boolean isPure(String name) {
        Line line = lines.get(name);
        return line != null && line.pure();
    }

    /** Whether the class lives in a package that sees no file, clock, thread or chance. */
    boolean isPure(JavaClass javaClass) {
        return isPure(nameOf(javaClass));
    }

    /** Sentences about classes in packages without a line; empty when the plan is complete. */
    List<String> unplanned(JavaClasses classes) {
        return classes.stream()
                .map(this::nameOf)
                .filter(name -> !lines.containsKey(name))
                .distinct()
                .sorted()
                .map(name -> "The package " + root + "." + name + " has no line in the floor plan.")
                .toList();
    }

    /** Sentences about imports that no line allows, each with its file and line; empty when code follows the plan. */
    List<String> strayImports(JavaClasses classes) {
        return classes.stream()
                .filter(origin -> lines.containsKey(nameOf(origin)))
                .flatMap(origin -> origin.getDirectDependenciesFromSelf().stream())
                .filter(dependency -> !allows(dependency))
                .map(dependency -> nameOf(dependency.getOriginClass()) + " may not use "
                        + target(dependency).getPackageName() + ": " + dependency.getDescription())
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * The same for what sources import: the compiler copies constants, so that classes do not show where they are from.
     */
    List<String> strayImportLines(List<JavaSource> sources) {
        return sources.stream()
                .filter(source -> source.unit().getPackageName() != null)
                .flatMap(source -> source.unit().getImports().stream()
                        .filter(line ->
                                !allows(nameOf(source.unit().getPackageName().toString()), packageOf(line)))
                        .map(line -> source.at(line, "may not import " + line.getQualifiedIdentifier())))
                .toList();
    }

    /** Packages are written small, and the first name with a capital is that of a class. */
    private static String packageOf(ImportTree line) {
        return Stream.of(line.getQualifiedIdentifier().toString().split("\\."))
                .takeWhile(part -> !Character.isUpperCase(part.charAt(0)) && !part.equals("*"))
                .collect(Collectors.joining("."));
    }

    private boolean allows(Dependency dependency) {
        JavaClass target = target(dependency);
        return target.isPrimitive() || allows(nameOf(dependency.getOriginClass()), target.getPackageName());
    }

    private boolean allows(String origin, String targetPackage) {
        Line line = lines.get(origin);
        if (line == null) {
            return true;
        }
        if (isIn(targetPackage, root)) {
            String name = nameOf(targetPackage);
            return name.equals(origin) || line.imports().contains(name);
        }
        boolean elsewhere = lines.values().stream()
                .flatMap(other -> other.homeOf().stream())
                .anyMatch(home -> isIn(targetPackage, home));
        return (elsewhere ? line.homeOf() : FOR_EVERYBODY).stream().anyMatch(home -> isIn(targetPackage, home));
    }

    private static JavaClass target(Dependency dependency) {
        return dependency.getTargetClass().getBaseComponentType();
    }

    private static boolean isIn(String packageName, String parent) {
        return packageName.equals(parent) || packageName.startsWith(parent + ".");
    }

    private String nameOf(JavaClass javaClass) {
        return nameOf(javaClass.getPackageName());
    }

    private String nameOf(String packageName) {
        if (packageName.equals(root)) {
            return ".";
        }
        String name = packageName.substring(root.length() + 1);
        int generated = (name + ".").indexOf(GENERATED + ".");
        return generated < 0 ? name : name.substring(0, generated);
    }
}
