package thalweg.bench;

/** A program that does nothing but print a line. */
public final class BareJava {

    static final String LINE = "here I am";

    private BareJava() {}

    /** Prints it. */
    public static void main(String[] arguments) {
        System.out.println(LINE);
    }
}
