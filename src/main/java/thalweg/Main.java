package thalweg;

/** Starts the program. */
public final class Main {

    private Main() {}

    /**
     * @param arguments as given on the command line
     */
    public static void main(String[] arguments) {
        System.out.println("Thalweg");
    }
}
