package thalweg.logbook;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thalweg.fault.Sentence;
import thalweg.ledger.Uid;
import thalweg.route.PartialDate;

/**
 * What somebody found on one part. It never changes.
 *
 * @param part that was looked at
 * @param on when
 * @param by who looked; empty text where unknown
 * @param found condition as found; empty where the part was not seen
 * @param left condition as left, where work changed it
 * @param water how much water there was; empty where nobody said
 * @param work what was done, each at most once
 * @param note empty text where there is none
 * @param round the visit to the canyon on which it was made, if it was part of one
 * @param photos that show it
 */
public record Inspection(
        Uid part,
        PartialDate on,
        String by,
        Optional<Condition> found,
        Optional<Condition> left,
        Optional<WaterLevel> water,
        List<Work> work,
        String note,
        Optional<Uid> round,
        List<Photo> photos) {

    public Inspection {
        work = work.stream().sorted().distinct().toList();
        photos = List.copyOf(photos);
        if (found.isEmpty() && left.isEmpty() && !work.isEmpty()) {
            throw new IllegalArgumentException("a part that was worked on was seen");
        }
    }

    /** An inspection by itself, without photos. */
    public Inspection(
            Uid part,
            PartialDate on,
            String by,
            Optional<Condition> found,
            Optional<Condition> left,
            Optional<WaterLevel> water,
            List<Work> work,
            String note) {
        this(part, on, by, found, left, water, work, note, Optional.empty(), List.of());
    }

    /** The same with more photos, after those that it has. */
    public Inspection withPhotos(List<Photo> more) {
        List<Photo> all = Stream.concat(photos.stream(), more.stream()).toList();
        return new Inspection(part, on, by, found, left, water, work, note, round, all);
    }

    /** The same as a part of that round. */
    public Inspection inRound(Uid visit) {
        return new Inspection(part, on, by, found, left, water, work, note, Optional.of(visit), photos);
    }

    /**
     * What is missing where a part is no longer what it was when it was found: how it was found says nothing of what is
     * there now.
     *
     * @return empty where nothing is
     */
    public Optional<Sentence> unsaid() {
        if (work.contains(Work.REPLACED)) {
            return left.isPresent()
                    ? Optional.empty()
                    : Optional.of(Sentence.of(
                            "A part that was replaced was left in the condition of the new one; say which that is."));
        }
        return !work.contains(Work.REMOVED) || left.equals(Optional.of(Condition.GONE))
                ? Optional.empty()
                : Optional.of(Sentence.of("A part that was removed was left gone; say so, or leave the work out."));
    }

    /** Whether the part was seen at all. */
    public boolean wasSeen() {
        return found.isPresent() || left.isPresent();
    }

    /** The condition in which the part was left: what the next group meets. */
    public Optional<Condition> afterwards() {
        return left.isPresent() ? left : found;
    }
}
