package thalweg.rig;

import java.util.Optional;
import thalweg.fault.Sentence;

/**
 * One of the two questions that decide between layouts.
 *
 * @param asked the question
 * @param answer empty where it cannot be told
 * @param saying a sentence with the figures that it rests on
 */
public record RigQuestion(Sentence asked, Optional<Boolean> answer, Sentence saying) {

    /** What it rests on, in English. */
    public String why() {
        return saying.toString();
    }
}
