package thalweg.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thalweg.house.Checkout.Outcome;

/** How the program is built and started from a checkout. */
class StartScriptTest {

    @TempDir
    Path folder;

    private Checkout checkout;

    @BeforeEach
    void makeCheckout() throws IOException {
        checkout = new Checkout(folder);
    }

    @Test
    void withoutJavaOneSentenceSaysWhatIsNeeded() throws Exception {
        Outcome outcome = checkout.withMaven("").start();

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith("Thalweg needs Java 17 or newer; no java was found.");
        assertThat(outcome.err().lines()).hasSize(1);
        assertThat(checkout.builds()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"11.0.2", "1.8.0_402", "16", "9-ea"})
    void anOldJavaIsNamedAndNotStarted(String version) throws Exception {
        Outcome outcome = checkout.withJava(version, "").withMaven("").start();

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith("Thalweg needs Java 17 or newer; ").contains(" is " + version + ".");
        assertThat(outcome.err().lines()).hasSize(1);
        assertThat(checkout.javaArguments()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"17", "17.0.15", "25-ea", "100.1"})
    void aNewEnoughJavaStarts(String version) throws Exception {
        assertThat(checkout.withJava(version, "").withMaven("").start().code()).isZero();
        assertThat(checkout.javaArguments()).contains("-jar");
    }

    @Test
    void theVersionIsReadBesideJavaWithoutStartingIt() throws Exception {
        Path javaHome = checkout.javaHome("17.0.15");

        Outcome outcome =
                checkout.with("JAVA_HOME", javaHome.toString()).withMaven("").start("list");

        assertThat(outcome.code()).isZero();
        assertThat(checkout.programArguments()).containsExactly("list");
    }

    @Test
    void withoutMavenOneSentenceSaysWhatIsNeeded() throws Exception {
        Outcome outcome = checkout.withJava("17", "").start();

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.err()).startsWith("Thalweg must be built before it starts, and no mvn was found.");
        assertThat(outcome.err().lines()).hasSize(1);
    }

    @Test
    void aBuiltCheckoutNeedsNoMaven() throws Exception {
        checkout.withJava("17", "").withMaven("").start();
        checkout.withCommand("mvn", "exit 1");

        assertThat(checkout.start().code()).isZero();
    }

    @Test
    void aFailedBuildNamesItsLogAndIsTriedAgain() throws Exception {
        checkout.withJava("17", "").withMaven("echo 'what went wrong'; exit 1");

        Outcome outcome = checkout.start();

        assertThat(outcome.code()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines())
                .containsExactly(
                        "Building Thalweg, once; this takes about a minute ...",
                        "Thalweg could not be built; " + checkout.target("build.log") + " says why.");
        assertThat(checkout.target("build.log")).hasContent("what went wrong");
        assertThat(checkout.javaArguments()).isEmpty();

        assertThat(checkout.withMaven("").start().code()).isZero();
        assertThat(checkout.builds()).isEqualTo(2);
    }

    @Test
    void theSecondStartBuildsNothingAndSaysNothing() throws Exception {
        checkout.withJava("17", "").withMaven("echo 'much to say'");

        assertThat(checkout.start().err()).isEqualTo("Building Thalweg, once; this takes about a minute ...\n");
        assertThat(checkout.start()).isEqualTo(new Outcome(0, "", ""));
        assertThat(checkout.builds()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pom.xml", "src/main/java/Main.java", "src/main/java"})
    void whatIsNewerThanTheJarIsBuiltOnce(String changed) throws Exception {
        for (String file : List.of("pom.xml", "src/main/java/Main.java", "src/main/java", "src/main")) {
            Checkout.age(checkout.home().resolve(file));
        }
        checkout.withJava("17", "").withMaven("").start();
        Files.setLastModifiedTime(
                checkout.home().resolve(changed),
                Files.getLastModifiedTime(checkout.target("lib").getParent()));
        Checkout.age(checkout.target("thalweg-1.jar"));

        checkout.start();
        checkout.start();

        assertThat(checkout.builds()).isEqualTo(2);
    }

    @Test
    void aJarThatMavenLeavesAloneCountsAsBuilt() throws Exception {
        checkout.withJava("17", "").withMaven("").start();
        Checkout.age(checkout.target("thalweg-1.jar"));
        checkout.withMaven("touch -t 200109090146 '" + checkout.target("thalweg-1.jar") + "'");

        checkout.start();
        checkout.start();

        assertThat(checkout.builds()).isEqualTo(2);
    }

    @Test
    void aBuildThatWasCutShortIsDoneAgain() throws Exception {
        checkout.withJava("17", "").withMaven("").start();
        Files.createDirectories(checkout.target("building"));
        Files.writeString(checkout.target("building/process"), endedProcess() + "\n");

        checkout.start();
        checkout.start();

        assertThat(checkout.builds()).isEqualTo(2);
    }

    private static long endedProcess() throws IOException, InterruptedException {
        Process process = new ProcessBuilder("true").start();
        process.waitFor();
        return process.pid();
    }

    @Test
    void argumentsReachTheProgramUnchanged() throws Exception {
        String[] arguments = {"list", "two words", "", "*", "$HOME", "a\"b'c", "line\nbreak", "-Xmx1m", "--", "Łomnica"
        };

        checkout.withJava("17", "").withMaven("").start(arguments);

        assertThat(checkout.programArguments()).containsExactly(arguments);
    }

    @Test
    void aLinkToALinkStartsFromAnywhere() throws Exception {
        Path first = Files.createDirectories(folder.resolve("first"));
        Path second = Files.createDirectories(folder.resolve("second"));
        Files.createSymbolicLink(first.resolve("one"), checkout.script("thalweg"));
        Files.createSymbolicLink(second.resolve("two"), Path.of("../first/one"));
        checkout.withJava("17", "").withMaven("");

        Outcome outcome = checkout.run(folder, List.of("second/two", "list"));

        assertThat(outcome.code()).isZero();
        assertThat(checkout.javaArguments())
                .containsSequence("-jar", checkout.target("thalweg-1.jar").toString());
        assertThat(checkout.programArguments()).containsExactly("list");
    }

    @ParameterizedTest
    @CsvSource({"exit 0,0", "exit 1,1", "exit 3,3", "kill -9 $$,137"})
    void theExitCodeIsThatOfTheProgram(String body, int code) throws Exception {
        assertThat(checkout.withJava("17", body).withMaven("").start().code()).isEqualTo(code);
    }

    @Test
    void theScreenStartsWithTheQuickCompilerAlone() throws Exception {
        checkout.withJava("17", "").withMaven("");

        for (List<String> screen : List.of(
                List.<String>of(),
                List.of("--db", "list"),
                List.of("--db=x y"),
                List.of("--demo", "--anew", "--ascii", "--no-mouse", "--units", "imperial"),
                List.of("--theme", "plain", "--settings", "mine.json"))) {
            checkout.start(screen.toArray(String[]::new));
            assertThat(checkout.javaArguments()).as("%s", screen).contains("-XX:TieredStopAtLevel=1");
        }
        for (List<String> command : List.of(List.of("list"), List.of("--db", "x", "due"), List.of("--help"))) {
            checkout.start(command.toArray(String[]::new));
            assertThat(checkout.javaArguments()).as("%s", command).doesNotContain("-XX:TieredStopAtLevel=1");
        }
    }

    @ParameterizedTest
    @CsvSource({"C,C.UTF-8", "POSIX,C.UTF-8", "pl_PL.ISO-8859-2,unset", "de_DE.UTF-8,unset"})
    void aLocaleWithoutACharacterSetIsGivenOne(String language, String expected) throws Exception {
        checkout.withJava("17", "echo ${LC_ALL:-unset}").withMaven("").with("LANG", language);

        assertThat(checkout.start().out()).isEqualTo(expected + "\n");
    }

    @Test
    void theInputOfTheProgramIsThatOfTheScript() throws Exception {
        checkout.withJava("17", "cat").withMaven("");
        String piped = "printf 'from outside' | '" + checkout.script("thalweg") + "' import -";

        assertThat(checkout.run(folder, List.of("sh", "-c", piped)).out()).isEqualTo("from outside");
    }

    @Test
    void aClosedInputIsAnEmptyOne() throws Exception {
        checkout.withJava("17", "cat").withMaven("");
        String closed = "'" + checkout.script("thalweg") + "' import - <&-";

        assertThat(checkout.run(folder, List.of("sh", "-c", closed)))
                .extracting(Outcome::code, Outcome::out)
                .containsExactly(0, "");
    }
}
