package thalweg.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import thalweg.body.InspectionBody;
import thalweg.ledger.Uid;
import thalweg.logbook.Condition;
import thalweg.logbook.ConditionRules;
import thalweg.logbook.Inspection;
import thalweg.logbook.PartState;
import thalweg.logbook.Work;
import thalweg.route.PartialDate;

/** Keeps the condition of each part and the summary of each canyon and station, so that lists need not work them out. */
final class Summaries {

    private final Sql sql;
    private final StationSummaries stations;
    private final DueSummaries due;

    Summaries(Sql sql) {
        this.sql = sql;
        this.stations = new StationSummaries(sql);
        this.due = new DueSummaries(sql);
    }

    /** Works out one part's state from all its inspections. */
    void keepPart(long part) throws SQLException {
        List<Inspection> inspections = sql.all(INSPECTIONS, Summaries::inspection, part);
        PartState state = ConditionRules.stateOf(inspections);
        sql.run(
                KEEP_PART,
                part,
                state.condition().map(Condition::severity).orElse(null),
                state.seenOn().map(PartialDate::print).orElse(null),
                state.contradictory() ? 1 : 0,
                state.notSeenSince().map(PartialDate::print).orElse(null),
                state.entries(),
                replaced(inspections).map(PartialDate::print).orElse(null),
                looked(inspections).map(date -> date.latest().toString()).orElse(null),
                looked(inspections).map(PartialDate::print).orElse(null));
    }

    /** The last date on which anybody saw it, in whatever condition. */
    private static Optional<PartialDate> looked(List<Inspection> inspections) {
        return inspections.stream()
                .filter(Inspection::wasSeen)
                .map(Inspection::on)
                .max(PartialDate.BY_LAST_DAY);
    }

    private static Optional<PartialDate> replaced(List<Inspection> inspections) {
        return inspections.stream()
                .filter(inspection -> inspection.work().contains(Work.REPLACED))
                .map(Inspection::on)
                .max(PartialDate.BY_LAST_DAY);
    }

    private static Inspection inspection(ResultSet row) throws SQLException {
        Uid part = Uid.ofBytes(row.getBytes("uid"));
        return Bodies.sound(part, InspectionBody.read(part, Bodies.reader(part, row.getString("body"))));
    }

    /** Works out the summaries of one canyon and its stations from its parts' states. */
    void keepCanyon(long canyon) throws SQLException {
        sql.run(KEEP_CANYON, canyon);
        sql.run(KEEP_DROP, canyon);
        stations.keep(canyon);
        due.keep(canyon);
    }

    static final String INSPECTIONS = """
            select p.uid, i.body
              from inspection i
              join part p on p.key = i.part
             where i.part = ?
               and i.counts = 1
            """;

    private static final String KEEP_PART = """
            insert into part_state (part, condition, seen_on, contradictory, not_seen_since, entries,
                   replaced_on, looked_last, looked_on)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?)
                on conflict (part) do update
               set condition = excluded.condition, seen_on = excluded.seen_on,
                   contradictory = excluded.contradictory, not_seen_since = excluded.not_seen_since,
                   entries = excluded.entries, replaced_on = excluded.replaced_on,
                   looked_last = excluded.looked_last, looked_on = excluded.looked_on
            """;

    /** A month or a year sorts as its last day: '2025' || '-99-99' comes after every day of 2025. */
    static final String KEEP_CANYON = """
            insert into canyon_state (canyon, stations, longest_drop_cm, worst, gone, never_seen, newest)
            with seen as (
                select p.key as part, t.condition, t.seen_on
                  from obstacle o
                  join station s on s.parent = o.key and s.removed = 0
                  join anchor a on a.parent = s.key and a.removed = 0
                  join part p on p.parent = a.key and p.removed = 0
                  left join part_state t on t.part = p.key
                 where o.parent = ?1
                   and o.removed = 0
            )
            select c.key,
                   (select count(*)
                      from obstacle o
                      join station s on s.parent = o.key and s.removed = 0
                     where o.parent = c.key
                       and o.removed = 0),
                   coalesce(
                       c.longest_drop_cm,
                       (select max(o.drop_cm) from obstacle o where o.parent = c.key and o.removed = 0)),
                   (select max(condition) from seen where condition < 4),
                   (select count(*) from seen where condition = 4),
                   (select count(*) - count(condition) from seen),
                   (select seen_on from seen where seen_on is not null order by seen_on || '-99-99' desc limit 1)
              from canyon c
             where c.key = ?1
                on conflict (canyon) do update
               set stations = excluded.stations, longest_drop_cm = excluded.longest_drop_cm,
                   worst = excluded.worst, gone = excluded.gone, never_seen = excluded.never_seen, newest = excluded.newest
            """;

    /**
     * The longest drop is no less than the highest that anybody stated or entered. It is no more either where somebody
     * stated the longest, or where the line has drops and each has its height.
     */
    static final String KEEP_DROP = """
            update canyon_state
               set drop_from_cm = max(coalesce(d.stated, 0), coalesce(d.highest, 0)),
                   drop_to_cm = case
                       when d.stated is not null or (d.highest is not null and d.unmeasured = 0)
                       then max(coalesce(d.stated, 0), coalesce(d.highest, 0))
                   end
              from (select c.key, c.longest_drop_cm as stated, max(o.drop_cm) as highest,
                           coalesce(max(o.unmeasured), 0) as unmeasured
                      from canyon c
                      left join obstacle o on o.parent = c.key and o.removed = 0
                     where c.key = ?
                     group by c.key) d
             where canyon_state.canyon = d.key
            """;
}
