-- One row for each part that is in use, for the list of what is due: what the rules go by, and not what they say, for after
-- how long a part is due can be set. canyon, canyon_sort and position are the order along the lines of all canyons. look_group
-- is what decides after how long somebody is to look again. Dates count from their first day: seen_from is empty text where
-- nobody has seen the part; since_from is when it was placed or replaced, empty text where nobody knows, and null where it is
-- no textile.
create table part_due (
    part integer primary key references part (key),
    canyon blob not null check (length(canyon) = 16),
    canyon_sort text not null,
    position integer not null,
    look_group integer not null,
    seen_from text not null,
    since_from text
) strict;

-- Each holds all that its order goes by, and all that counting asks.
create index part_due_by_look on part_due (look_group, seen_from, canyon_sort, canyon, position, since_from);

create index part_due_by_since on part_due (since_from, canyon_sort, canyon, position, look_group, seen_from)
 where since_from is not null;
