-- Marks sort by their characters in both databases; a placeholder says so where it has to be said.

-- Things of the crib. The columns from status on are folded from the events, kept here to be searched.
create table item (
    mark             varchar(32) ${exact} not null primary key,
    kind             varchar(12)  not null,
    size             varchar(80)  not null,
    hand_set         varchar(40)  not null,
    card             text         not null,
    status           varchar(12)  not null,
    place            varchar(200) not null,
    holes            bigint       not null,
    since_sharp      bigint       not null,
    sharpenings      bigint       not null,
    calibration_due  varchar(10)  not null,
    last_seq         bigint       not null,
    last_at          bigint       not null
);
create index item_size on item (kind, size);
create index item_set on item (hand_set);

-- What happened. Rows are added and never changed. Times in milliseconds since 1970, UTC.
create table event (
    mark    varchar(32) ${exact} not null references item (mark),
    seq     bigint       not null,
    at      bigint       not null,
    kind    varchar(12)  not null,
    by_whom varchar(80)  not null,
    fields  text         not null,
    ticket  varchar(64)  not null,
    primary key (mark, seq)
);
-- A ticket names a request, so that one that was sent twice is kept once.
create unique index event_ticket on event (mark, ticket);

-- Facts about the store itself.
create table note (
    name varchar(40) not null primary key,
    told text        not null
);
