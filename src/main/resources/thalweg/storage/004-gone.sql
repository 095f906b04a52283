-- Parts that are gone are counted; worst is the worst condition of what is there.
alter table canyon_state add column gone integer not null default 0;
