package thalweg.house;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaConstructor;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What a pure class does not touch: files, streams, the network, threads, the clock, chance, this machine's settings. */
final class Purity {

    private static final List<String> FORBIDDEN_PACKAGES = List.of(
            "java.io.",
            "java.nio.file.",
            "java.nio.channels.",
            "java.net.",
            "java.sql.",
            "javax.sql.",
            "java.util.concurrent.",
            "java.util.logging.");

    /** Failures and markers that open nothing, and buffers that never leave memory. */
    private static final Set<String> ALLOWED_TYPES = Set.of(
            "java.io.Serializable",
            "java.io.ObjectStreamException",
            "java.io.IOException",
            "java.io.UncheckedIOException",
            "java.io.ByteArrayInputStream",
            "java.io.ByteArrayOutputStream",
            "java.io.StringReader",
            "java.io.StringWriter");

    private static final Set<String> FORBIDDEN_TYPES = Set.of(
            "java.lang.Process",
            "java.lang.ProcessBuilder",
            "java.lang.ProcessHandle",
            "java.lang.Runtime",
            "java.lang.Thread",
            "java.lang.ThreadLocal",
            "java.security.SecureRandom",
            "java.time.Clock",
            "java.util.Scanner",
            "java.util.Timer",
            "java.util.TimerTask");

    /** Owner and name; a call, a method reference and a field alike. */
    private static final Set<String> FORBIDDEN_MEMBERS = Set.of(
            "java.lang.Class.getResource",
            "java.lang.Class.getResourceAsStream",
            "java.lang.ClassLoader.getResource",
            "java.lang.ClassLoader.getResourceAsStream",
            "java.lang.Math.random",
            "java.lang.StrictMath.random",
            "java.nio.charset.Charset.defaultCharset",
            "java.time.ZoneId.systemDefault",
            "java.util.Calendar.getInstance",
            "java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault",
            "java.util.UUID.randomUUID",
            "java.util.random.RandomGenerator.getDefault");

    /** Constructors that take chance or the clock when nothing is given to them. */
    private static final Set<String> UNSEEDED =
            Set.of("java.util.Random", "java.util.SplittableRandom", "java.util.Date", "java.util.GregorianCalendar");

    private Purity() {}

    /** Sentences about what the class touches, each with its file and line; empty for a pure class. */
    static Stream<String> breaches(JavaClass javaClass) {
        Stream<String> types = javaClass.getDirectDependenciesFromSelf().stream()
                .filter(Purity::isForbidden)
                .map(Dependency::getDescription);
        Stream<String> members = javaClass.getAccessesFromSelf().stream()
                .filter(Purity::isForbidden)
                .map(JavaAccess::getDescription);
        return Stream.concat(types, members).distinct();
    }

    private static boolean isForbidden(Dependency dependency) {
        String name = dependency.getTargetClass().getBaseComponentType().getFullName();
        return FORBIDDEN_TYPES.contains(name)
                || (!ALLOWED_TYPES.contains(name) && FORBIDDEN_PACKAGES.stream().anyMatch(name::startsWith));
    }

    private static boolean isForbidden(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getFullName();
        String name = access.getTarget().getName();
        return FORBIDDEN_MEMBERS.contains(owner + "." + name)
                || (owner.equals("java.lang.System") && !name.equals("arraycopy"))
                || (owner.startsWith("java.time.") && name.equals("now"))
                || name.equals("parallelStream")
                || (owner.startsWith("java.util.stream.") && name.equals("parallel"))
                || (name.equals(JavaConstructor.CONSTRUCTOR_NAME)
                        && UNSEEDED.contains(owner)
                        && parameters(access) == 0)
                || (owner.equals("java.util.Collections") && name.equals("shuffle") && parameters(access) == 1);
    }

    private static int parameters(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget target
                ? target.getRawParameterTypes().size()
                : -1;
    }

    /** Whether the access ends the program. */
    static boolean endsTheProgram(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getFullName();
        return Set.of("java.lang.System", "java.lang.Runtime").contains(owner)
                && Set.of("exit", "halt").contains(access.getTarget().getName());
    }
}
