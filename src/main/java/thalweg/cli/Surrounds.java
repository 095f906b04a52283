package thalweg.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.time.Clock;
import java.util.function.BooleanSupplier;
import thalweg.service.Folders;
import thalweg.text.Language;

/**
 * What a command has around it.
 *
 * @param folders where databases are
 * @param clock that says what day it is
 * @param user name of the account
 * @param in standard input
 * @param out standard output: results and nothing else
 * @param err standard error: everything else
 * @param asksPeople whether somebody can answer a question on standard input
 * @param language that the environment asks for
 * @param version of the program
 */
public record Surrounds(
        Folders folders,
        Clock clock,
        String user,
        InputStream in,
        PrintStream out,
        PrintStream err,
        BooleanSupplier asksPeople,
        Language language,
        String version) {}
