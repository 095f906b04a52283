package thalweg;

/** The version of the program, as it stands in every analysis and on every sheet. */
final class Version {

    /** The same as in pom.xml; a test holds the two together. */
    static final String NUMBER = "0.1.0";

    private Version() {}
}
