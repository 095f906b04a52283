package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;
import thalweg.Main;

/** The floor plan of the program, and whether the classes that were compiled follow it. */
class FloorPlanTest {

    /**
     * Package, purity, what it may import, libraries whose only home it is. Records carry the stable ids of the ledger,
     * so it lies below them.
     */
    private static final String TABLE = """
            fault         | pure |                                                                              |
            progress      | pure | fault                                                                        |
            units         | pure | fault                                                                        |
            text          | pure | fault                                                                        |
            json          | pure | fault text                                                                   | com.fasterxml.jackson
            place         | pure | fault units text                                                             |
            qr            | pure |                                                                              | com.google.zxing
            drawing       | pure | units                                                                        |
            rig           | pure | fault units drawing                                                          | org.hipparchus
            settings      | pure | fault units text json rig                                                    |
            ledger        | pure | fault text json                                                              |
            draft         | pure | units rig ledger                                                             |
            route         | pure | fault units text place ledger                                                |
            logbook       | pure | fault units text place rig ledger route                                      |
            body          | pure | fault units text json place rig ledger route logbook                         |
            amend         | pure | fault units text json place ledger route logbook body                        |
            due           | pure | text rig settings ledger route logbook                                       |
            plan          | pure | fault units text place rig settings ledger route logbook due                  | org.shredzone
            profile       | pure | units text drawing route logbook                                             |
            timeline      | pure | text drawing route logbook                                                   |
            sheet         | pure | fault units text place drawing rig settings ledger route logbook due plan profile timeline |
            why           | pure | fault units text rig settings sheet                                          |
            exchange      | pure | fault units text json place rig ledger route logbook body                    |
            exchange.json |      | fault units text json place rig settings ledger route logbook body plan exchange      |
            exchange.gpx  | pure | fault units text json place body                                             |
            exchange.table | pure | fault units text json place ledger route logbook body exchange                 |
            exchange.geojson | pure | fault units text json place body exchange.gpx                               |
            exchange.map  | pure | units text json place ledger route logbook                                   |
            placing       | pure | place ledger route logbook exchange.gpx                                      |
            exchange.csv  |      | fault units text json place rig ledger route logbook body due exchange exchange.table | de.siegmar.fastcsv
            sheet.html    |      | fault units text qr drawing sheet                                             | gg.jte
            sheet.text    |      | fault units text drawing sheet                                               |
            sheet.pdf     |      | fault text sheet sheet.html                                                 | com.openhtmltopdf org.apache.pdfbox org.apache.fontbox org.w3c.dom org.xml.sax
            sheet.markdown |     | fault units text drawing sheet                                              |
            storage       |      | fault progress units text json place rig ledger route logbook body           | java.sql org.sqlite
            service       |      | above                                                                        |
            tui.core      | pure | units text settings draft                                                    |
            tui.widget    | pure | units text drawing tui.core                                                  |
            tui.screen    | pure | below-screen tui.core tui.widget                                             |
            tui.shell     | pure | units text draft tui.core tui.widget tui.screen                              |
            tui.runtime   |      | fault progress units text ledger draft logbook due plan sheet amend exchange.gpx exchange.table placing service tui.core tui.screen tui.shell |
            tui.lanterna  |      | fault units text settings tui.core tui.runtime                                   | com.googlecode.lanterna
            cli           |      | below-screen service                                                         | picocli
            .             |      | above                                                                        |
            """;

    private static final FloorPlan PLAN = FloorPlan.of("thalweg", TABLE);

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());

    @Test
    void everyPackageHasALine() {
        assertThat(CLASSES).isNotEmpty();

        assertThat(PLAN.unplanned(CLASSES)).isEmpty();
    }

    @Test
    void packagesUseOnlyWhatTheirLineNames() {
        assertThat(PLAN.strayImports(CLASSES)).isEmpty();
    }

    @Test
    void sourcesImportOnlyWhatTheirLineNames() {
        assertThat(PLAN.strayImportLines(JavaSource.under("src/main/java"))).isEmpty();
    }

    @Test
    void purePackagesTouchNothingOutside() {
        assertThat(CLASSES.stream().filter(PLAN::isPure)).isNotEmpty();

        assertThat(CLASSES.stream().filter(PLAN::isPure).flatMap(Purity::breaches))
                .isEmpty();
    }

    @Test
    void onlyTheStartOfTheProgramEndsIt() {
        assertThat(CLASSES.stream()
                        .filter(javaClass -> !javaClass.isEquivalentTo(Main.class))
                        .flatMap(javaClass -> javaClass.getAccessesFromSelf().stream())
                        .filter(Purity::endsTheProgram)
                        .map(JavaAccess::getDescription))
                .isEmpty();
    }
}
