create trigger sly after insert on fact begin delete from revision; end
