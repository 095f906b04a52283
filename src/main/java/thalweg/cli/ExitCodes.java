package thalweg.cli;

import thalweg.fault.AppException;
import thalweg.fault.StoreException;

/** What a command says to the shell. */
public final class ExitCodes {

    /** Done. */
    public static final int DONE = 0;

    /** The answer is no, or there are findings. */
    public static final int NO = 1;

    /** Wrong use or wrong input. */
    public static final int WRONG_INPUT = 2;

    /** The database cannot be used. */
    public static final int UNUSABLE_DATABASE = 3;

    private ExitCodes() {}

    /** The code for an answer that stopped the work. */
    public static int of(AppException answer) {
        return answer instanceof StoreException ? UNUSABLE_DATABASE : WRONG_INPUT;
    }
}
