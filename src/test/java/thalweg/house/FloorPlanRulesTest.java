package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The rules of the floor plan, tried on classes that break them on purpose. */
class FloorPlanRulesTest {

    private static final String ROOT = "thalweg.house.fixture";

    private static final FloorPlan PLAN = FloorPlan.of(ROOT, """
            low   | pure |     | java.sql
            high  |      | low | com.fasterxml.jackson
            """);

    private static final JavaClasses FIXTURES = new ClassFileImporter().importPackages(ROOT);

    @Test
    void aPackageWithoutALineIsNamed() {
        assertThat(PLAN.unplanned(FIXTURES))
                .containsExactly("The package thalweg.house.fixture.unplanned has no line in the floor plan.");
    }

    @Test
    void anImportFromBelowIsNamedWithItsFile() {
        assertThat(PLAN.strayImports(FIXTURES))
                .anySatisfy(finding -> assertThat(finding)
                        .startsWith("low may not use thalweg.house.fixture.high: ")
                        .contains("(Upward.java:"));
    }

    @Test
    void onlyUpwardAndForeignImportsAreStray() {
        assertThat(PLAN.strayImports(FIXTURES))
                .allMatch(finding -> finding.startsWith("low may not use thalweg.house.fixture.high: ")
                        || finding.startsWith("high may not use java.sql: ")
                        || finding.startsWith("high may not use com.googlecode.lanterna: "))
                .anyMatch(finding -> finding.startsWith("high may not use java.sql: "))
                .anyMatch(finding -> finding.startsWith("high may not use com.googlecode.lanterna: "));
    }

    @Test
    void aStrayImportIsNamedWithItsLine() {
        JavaSource source = JavaSource.of("low/Sample.java", """
                package thalweg.house.fixture.low;
                import java.util.List;
                import static thalweg.house.fixture.high.Downward.CONSTANT;
                import thalweg.house.fixture.low.Ground;
                import com.fasterxml.jackson.core.*;
                import java.sql.Connection;
                import thalweg.house.fixture.high.Outer.Inner;
                class Sample {}
                """);

        assertThat(PLAN.strayImportLines(List.of(source)))
                .containsExactly(
                        "low/Sample.java:3: may not import thalweg.house.fixture.high.Downward.CONSTANT",
                        "low/Sample.java:5: may not import com.fasterxml.jackson.core.*",
                        "low/Sample.java:7: may not import thalweg.house.fixture.high.Outer.Inner");
    }

    static Stream<JavaClass> impureClasses() {
        return FIXTURES.stream()
                .filter(javaClass -> javaClass.getName().contains("Impure$"))
                .filter(javaClass -> !javaClass.getSimpleName().equals("Seeded"));
    }

    @ParameterizedTest
    @MethodSource("impureClasses")
    void eachImpureClassIsCaught(JavaClass impure) {
        assertThat(PLAN.isPure(impure)).isTrue();

        assertThat(Purity.breaches(impure)).isNotEmpty();
    }

    @Test
    void pureClassesPass() {
        assertThat(Stream.of("low.Impure$Seeded", "low.Ground", "high.Downward")
                        .map(name -> FIXTURES.get(ROOT + "." + name))
                        .flatMap(Purity::breaches))
                .isEmpty();
    }

    @Test
    void endingTheProgramIsSeen() {
        assertThat(FIXTURES.get(ROOT + ".low.Impure$Ending").getAccessesFromSelf())
                .anyMatch(Purity::endsTheProgram);
    }

    @Test
    void aLineCannotNameALaterPackage() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FloorPlan.of(ROOT, "low | | high |\nhigh | | |"))
                .withMessageContaining("not high");
    }

    @Test
    void aLineWithAnUnknownMarkIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> FloorPlan.of(ROOT, "low | rather pure | |"));
    }
}
