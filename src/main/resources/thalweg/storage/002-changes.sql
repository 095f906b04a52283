-- Things can be taken out of use, entries corrected and withdrawn; both stay where they are.
alter table canyon add column removed integer not null default 0 check (removed in (0, 1));

alter table obstacle add column removed integer not null default 0 check (removed in (0, 1));

alter table station add column removed integer not null default 0 check (removed in (0, 1));

alter table anchor add column removed integer not null default 0 check (removed in (0, 1));

alter table part add column removed integer not null default 0 check (removed in (0, 1));

-- Whether an entry counts follows from what corrects and withdraws it; amended says that there is such a thing at all.
alter table inspection add column counts integer not null default 1 check (counts in (0, 1));

alter table inspection add column amended integer not null default 0 check (amended in (0, 1));

alter table inspection add column corrects blob check (length(corrects) = 16);

alter table rigging_note add column counts integer not null default 1 check (counts in (0, 1));

alter table rigging_note add column amended integer not null default 0 check (amended in (0, 1));

alter table rigging_note add column corrects blob check (length(corrects) = 16);

alter table rig_analysis add column counts integer not null default 1 check (counts in (0, 1));

alter table rig_analysis add column amended integer not null default 0 check (amended in (0, 1));

alter table rig_analysis add column corrects blob check (length(corrects) = 16);

create table round (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    canyon integer not null references canyon (key),
    day text not null,
    last_day text not null,
    author text not null,
    at text not null,
    body text not null,
    counts integer not null default 1 check (counts in (0, 1)),
    amended integer not null default 0 check (amended in (0, 1)),
    corrects blob check (length(corrects) = 16)
) strict;

create index round_by_canyon on round (canyon, last_day desc, uid);

create table withdrawal (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    withdrawn blob not null check (length(withdrawn) = 16),
    author text not null,
    at text not null,
    body text not null
) strict;

create index withdrawal_by_withdrawn on withdrawal (withdrawn, uid);

-- What stays with this database: derived from the ledger like the rest, but never passed on unasked.
create table sheet_given (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    canyon integer not null references canyon (key),
    day text not null,
    last_day text not null,
    author text not null,
    at text not null,
    body text not null,
    counts integer not null default 1 check (counts in (0, 1)),
    amended integer not null default 0 check (amended in (0, 1)),
    corrects blob check (length(corrects) = 16)
) strict;

create index sheet_given_by_canyon on sheet_given (canyon, last_day desc, uid);

create table trip (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    parent integer not null references canyon (key),
    place text not null,
    body text not null,
    removed integer not null default 0 check (removed in (0, 1))
) strict;

create index trip_by_place on trip (parent, place desc, uid);

create table private_note (
    key integer primary key,
    uid blob not null unique check (length(uid) = 16),
    head blob not null check (length(head) = 32),
    about blob not null check (length(about) = 16),
    body text not null,
    removed integer not null default 0 check (removed in (0, 1))
) strict;

create index private_note_by_about on private_note (about, uid);

-- What was written together, so that it can be taken back together. Of this database only; the ledger knows nothing of it.
create table change (
    key integer primary key,
    kind text not null check (kind in ('done', 'undone', 'redone')),
    undoes integer references change (key),
    author text not null,
    at text not null,
    canyon blob check (length(canyon) = 16)
) strict;

create index change_by_canyon on change (canyon, key);

create index change_by_undoes on change (undoes, key);

create table change_entry (
    change integer not null references change (key),
    position integer not null,
    revision integer references revision (key),
    fact integer references fact (key),
    primary key (change, position),
    check ((revision is null) <> (fact is null))
) strict, without rowid;
