-- What words find. The rows hold folded words of letters and digits, so there is nothing left to fold or to cut:
-- the ascii tokenizer keeps every sign beyond ASCII as it is and knows no tables of letters that could be older
-- than a word. Only the index is kept; the words themselves follow from the bodies.
create virtual table canyon_words using fts5 (
    names, region, country,
    content = '', contentless_delete = 1, detail = column, tokenize = 'ascii', prefix = '1 2'
);

create virtual table station_words using fts5 (
    own, canyon,
    content = '', contentless_delete = 1, detail = column, tokenize = 'ascii', prefix = '1 2'
);

create virtual table part_words using fts5 (
    label, kind, material, size, standard, maker, batch, note, place,
    content = '', contentless_delete = 1, detail = column, tokenize = 'ascii', prefix = '1 2'
);

-- They held the words before.
alter table canyon drop column search;
alter table station drop column search;

-- What filters ask for. A level that nobody stated is null; "from" and "to" are what is surely reached and surely not
-- passed, where a null has no end. American water is 0 for A, 1 for B, 2 to 5 for C1 to C4; risk is 0 where a grade
-- names none, 1 for R, 2 for X.
alter table canyon add column region text not null default '';
alter table canyon add column country text not null default '';
alter table canyon add column french_vertical integer;
alter table canyon add column french_aquatic integer;
alter table canyon add column french_commitment integer;
alter table canyon add column american_class integer;
alter table canyon add column american_water_from integer;
alter table canyon add column american_water_to integer;
alter table canyon add column american_time integer;
alter table canyon add column american_risk integer;
alter table canyon add column minutes_from integer not null default 0;
alter table canyon add column minutes_to integer;
alter table canyon_state add column drop_from_cm integer not null default 0;
alter table canyon_state add column drop_to_cm integer;

-- A drop whose height nobody entered may be the longest.
alter table obstacle add column unmeasured integer not null default 0 check (unmeasured in (0, 1));

-- The last day on which an inspection may have said that the part was replaced.
alter table part_state add column replaced_on text;
