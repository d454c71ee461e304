-- Jobs, as they were told: texts by path as JSON. Jobs and their lines are added and never changed.
create table job (
    number   varchar(32) ${exact} not null primary key,
    made_at  bigint       not null,
    made_by  varchar(80)  not null,
    fields   text         not null
);
create index job_made on job (made_at);

-- One line of a drawing's holes; the first is line 1.
create table job_hole (
    job     varchar(32) ${exact} not null references job (number),
    line    bigint       not null,
    fields  text         not null,
    primary key (job, line)
);

-- Holes that are done: which event of which tap tells them. What that event says, and whether it was taken back, stands
-- in the tap's history and nowhere else.
create table job_done (
    mark    varchar(32) ${exact} not null references item (mark),
    ticket  varchar(64)  not null,
    job     varchar(32) ${exact} not null,
    line    bigint       not null,
    primary key (mark, ticket),
    foreign key (job, line) references job_hole (job, line)
);
create index job_done_line on job_done (job, line);
