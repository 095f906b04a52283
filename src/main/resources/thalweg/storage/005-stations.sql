-- When anybody last saw a part: the last day that the date can mean, which is what it sorts by, and the date as written.
alter table part_state add column looked_last text;
alter table part_state add column looked_on text;

-- A station's name, folded.
alter table station add column sort text not null default '';

-- One row for each station that is in use, for the list of all stations. position orders those of a canyon from the top
-- down, place is the number of the place on the line. severity is the worst condition found, gone among them: -1 where
-- nobody has seen any part, -2 where no part is entered. looked_last is empty text where nobody has looked.
create table station_state (
    station integer primary key references station (key),
    canyon integer not null references canyon (key),
    canyon_sort text not null,
    sort text not null,
    position integer not null,
    place integer not null,
    parts integer not null,
    worst integer,
    gone integer not null,
    never_seen integer not null,
    severity integer not null,
    looked_last text not null,
    looked_on text not null
) strict;

-- Each holds all that its order goes by, so that the order of all stations is read from it alone.
create index station_by_looked on station_state (looked_last, severity desc, canyon_sort, canyon, position);

create index station_by_name on station_state (sort, canyon_sort, canyon, position);

create index station_by_canyon on station_state (canyon_sort, canyon, position);

create index station_by_severity on station_state (severity desc, looked_last, canyon_sort, canyon, position);
