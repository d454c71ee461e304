-- Who may do what. Names are kept in small letters; a password only as its hash.
create table person (
    name     varchar(40) ${exact} not null primary key,
    shown    varchar(80)  not null,
    role     varchar(8)   not null,
    password varchar(200) not null,
    active   integer      not null,
    since    bigint       not null
);

-- Who is signed in. Of the token that a browser holds, only the SHA-256 is kept. Times in milliseconds since 1970, UTC.
create table sign_in (
    token  varchar(64) not null primary key,
    person varchar(40) ${exact} not null references person (name),
    since  bigint      not null,
    seen   bigint      not null
);
create index sign_in_person on sign_in (person);
