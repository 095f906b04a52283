-- A station is as old as the look at the part that was longest not seen, not as the newest look at any of its parts.
-- oldest_look is that date as written, of the parts that were seen; empty text where none was. look_order is what stations
-- sort by: empty text where nobody has looked at any part, '0' where at some, else the last day that oldest_look can mean.
alter table station_state rename column looked_on to oldest_look;

alter table station_state rename column looked_last to look_order;
