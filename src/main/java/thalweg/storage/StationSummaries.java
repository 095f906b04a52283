package thalweg.storage;

import java.sql.SQLException;

/** Keeps what the list of all stations shows and sorts by, so that it need not be worked out. */
final class StationSummaries {

    /** A station that moved is a station of where it is now: what was kept of it elsewhere goes too. */
    static final String FORGET = """
            delete from station_state
             where station in (select s.key
                                 from obstacle o
                                 join station s on s.parent = o.key
                                where o.parent = ?)
            """;

    /**
     * "cross" keeps the order of the joins: left to itself the database begins with all anchors that there are.
     *
     * <p>Of two dates with the same last day the exact one is longer and so comes last, as it should: the other can mean
     * an earlier day. Nobody looks for what is gone, so that counts only where all of it is.
     */
    static final String KEEP = """
            insert into station_state (station, canyon, canyon_sort, sort, position, place, parts, worst, gone,
                   never_seen, severity, look_order, oldest_look)
            with place as (
                select o.key, o.place as sorted, o.uid, row_number() over (order by o.place, o.uid) as number
                  from obstacle o
                 where o.parent = ?1
                   and o.removed = 0
            ), found as (
                select a.parent as station, t.condition, t.looked_last || ' ' || t.looked_on as looked
                  from place l
                 cross join station s on s.parent = l.key and s.removed = 0
                 cross join anchor a on a.parent = s.key and a.removed = 0
                 cross join part p on p.parent = a.key and p.removed = 0
                  left join part_state t on t.part = p.key
            ), summed as (
                select station, count(*) as parts, max(condition) filter (where condition < 4) as worst,
                       count(*) filter (where condition = 4) as gone, count(*) - count(condition) as never_seen,
                       coalesce(max(condition), -1) as severity,
                       coalesce(min(looked) filter (where condition < 4), min(looked)) as looked
                  from found
                 group by station
            )
            select s.key, c.key, c.sort, s.sort, row_number() over (order by l.number, s.place, s.uid), l.number,
                   coalesce(t.parts, 0), t.worst, coalesce(t.gone, 0), coalesce(t.never_seen, 0),
                   coalesce(t.severity, -2),
                   case when t.looked is null then '' when t.never_seen > 0 then '0' else substr(t.looked, 1, 10) end,
                   coalesce(substr(t.looked, 12), '')
              from place l
              join station s on s.parent = l.key and s.removed = 0
              join canyon c on c.key = ?1 and c.removed = 0
              left join summed t on t.station = s.key
            """;

    private final Sql sql;

    StationSummaries(Sql sql) {
        this.sql = sql;
    }

    /** Works out every station of a canyon from its parts' states. */
    void keep(long canyon) throws SQLException {
        sql.run(FORGET, canyon);
        sql.run(KEEP, canyon);
    }
}
