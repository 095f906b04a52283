package thalweg.rig;

import java.util.Optional;

/**
 * One of the two questions that decide between layouts.
 *
 * @param asked the question
 * @param answer empty where it cannot be told
 * @param why a sentence with the figures that it rests on
 */
public record RigQuestion(String asked, Optional<Boolean> answer, String why) {}
