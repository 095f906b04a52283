create table broken (
