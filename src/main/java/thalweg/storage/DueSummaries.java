package thalweg.storage;

import java.sql.SQLException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import thalweg.route.PartKind;

/** Keeps of each part what the rules of what is due go by, so that the order of all need not be worked out. */
final class DueSummaries {

    /** A part that moved is a part of where it is now: what was kept of it elsewhere goes too. */
    static final String FORGET = """
            delete from part_due
             where part in (select p.key
                              from obstacle o
                              join station s on s.parent = o.key
                              join anchor a on a.parent = s.key
                              join part p on p.parent = a.key
                             where o.parent = ?)
            """;

    /**
     * The group as {@link thalweg.logbook.LookGroup#code} has it, and since when a part is there as
     * {@link thalweg.logbook.PartRow#replacedSince} does: a replacement counts unless the date of placing tells of it.
     */
    static final String KEEP = """
            insert into part_due (part, canyon, canyon_sort, position, look_group, seen_from, since_from)
            with found as (
                select p.key as part, c.uid as canyon, c.sort as canyon_sort,
                       row_number() over (
                           order by o.place, o.uid, s.place, s.uid, a.place, a.uid, p.place, p.uid) as position,
                       coalesce(t.condition, 0) * 6 + coalesce(t.contradictory, 0) * 3
                           + case json_extract(s.body, '$.exposure') when 'marine' then 1 when 'wet' then 2 else 0 end
                           as look_group,
                       coalesce(t.seen_on, '') as seen,
                       json_extract(p.body, '$.kind') in (%s) as textile,
                       json_extract(p.body, '$.placed') as placed, t.replaced_on as replaced
                  from canyon c
                 cross join obstacle o on o.parent = c.key and o.removed = 0
                 cross join station s on s.parent = o.key and s.removed = 0
                 cross join anchor a on a.parent = s.key and a.removed = 0
                 cross join part p on p.parent = a.key and p.removed = 0
                  left join part_state t on t.part = p.key
                 where c.key = ?
                   and c.removed = 0
            ), dated as (
                select part, canyon, canyon_sort, position, look_group, seen, textile,
                       case
                           when replaced is null then placed
                           when placed is null then replaced
                           when replaced <> placed and case length(replaced)
                                   when 10 then replaced
                                   when 7 then date(replaced || '-01', '+1 month', '-1 day')
                                   else replaced || '-12-31'
                               end > substr(placed || '-01-01', 1, 10) then replaced
                           else placed
                       end as since
                  from found
            )
            select part, canyon, canyon_sort, position, look_group,
                   case seen when '' then '' else substr(seen || '-01-01', 1, 10) end,
                   case when textile then case when since is null then '' else substr(since || '-01-01', 1, 10) end end
              from dated
            """.formatted(Arrays.stream(PartKind.values())
            .filter(PartKind::isTextile)
            .map(kind -> "'" + kind.name().toLowerCase(Locale.ROOT) + "'")
            .collect(Collectors.joining(", ")));

    private final Sql sql;

    DueSummaries(Sql sql) {
        this.sql = sql;
    }

    /** Works out every part of a canyon from its state. */
    void keep(long canyon) throws SQLException {
        sql.run(FORGET, canyon);
        sql.run(KEEP, canyon);
    }
}
