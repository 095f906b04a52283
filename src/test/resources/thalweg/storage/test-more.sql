-- A second step for tests of the way from an older version.
create table more (
    key integer primary key,
    word text not null
) strict;

insert into more (word) values ('kept; not cut at this semicolon');
