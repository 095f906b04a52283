-- The ledger: only ever added to. What follows it is derived from it and can be rebuilt.
create table revision (
    key integer primary key,
    hash blob not null unique check (length(hash) = 32),
    thing blob not null check (length(thing) = 16),
    type text not null,
    gen integer not null check (gen >= 1),
    canonical text not null
) strict;

create index revision_by_thing on revision (thing, gen);

create table revision_parent (
    revision integer not null references revision (key),
    parent blob not null check (length(parent) = 32),
    primary key (revision, parent)
) strict, without rowid;

create table fact (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    type text not null,
    about blob not null check (length(about) = 16),
    canonical text not null
) strict;

create index fact_by_about on fact (about);

-- Things as they are shown: the body of the head, with what lists need in columns beside it.
create table canyon (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    name text not null,
    whereabouts text not null,
    french text not null,
    american text not null,
    longest_drop_cm integer,
    invented integer not null check (invented in (0, 1)),
    sort text not null,
    search text not null,
    body text not null
) strict;

create index canyon_by_sort on canyon (sort, uid);

create table obstacle (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    parent integer not null references canyon (key),
    place text not null,
    drop_cm integer,
    body text not null
) strict;

create index obstacle_by_place on obstacle (parent, place, uid);

create table station (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    parent integer not null references obstacle (key),
    place text not null,
    search text not null default '',
    body text not null
) strict;

create index station_by_place on station (parent, place, uid);

create table anchor (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    parent integer not null references station (key),
    place text not null,
    body text not null
) strict;

create index anchor_by_place on anchor (parent, place, uid);

create table part (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    parent integer not null references anchor (key),
    place text not null,
    body text not null
) strict;

create index part_by_place on part (parent, place, uid);

-- Facts as they are shown.
create table inspection (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    part integer not null references part (key),
    day text not null,
    last_day text not null,
    author text not null,
    at text not null,
    body text not null
) strict;

create index inspection_by_part on inspection (part, last_day desc, uid);

create table rigging_note (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    station integer not null references station (key),
    day text not null,
    last_day text not null,
    author text not null,
    at text not null,
    body text not null
) strict;

create index rigging_note_by_station on rigging_note (station, last_day desc, uid);

create table rig_analysis (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    station integer not null references station (key),
    day text not null,
    last_day text not null,
    author text not null,
    at text not null,
    body text not null
) strict;

create index rig_analysis_by_station on rig_analysis (station, last_day desc, uid);

-- Kept summaries: condition 0 is the best; null says that nobody has seen the part.
create table part_state (
    part integer primary key references part (key),
    condition integer,
    seen_on text,
    contradictory integer not null check (contradictory in (0, 1)),
    not_seen_since text,
    entries integer not null
) strict;

create table canyon_state (
    canyon integer primary key references canyon (key),
    stations integer not null,
    longest_drop_cm integer,
    worst integer,
    never_seen integer not null,
    newest text
) strict;

-- Local to this database; never shared.
create table setting (
    name text primary key,
    value text not null
) strict, without rowid;
