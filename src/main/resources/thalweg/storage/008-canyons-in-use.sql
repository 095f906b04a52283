-- The order of all canyons that are in use is read from it alone, and how many there are: a body may be long.
create index canyon_in_use on canyon (sort, uid) where removed = 0;
