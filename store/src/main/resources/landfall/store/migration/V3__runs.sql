-- What else is folded from the events of a thing; empty until it is folded by the present rules.
alter table item add column folded text default '' not null;
create index item_unfolded on item (mark) where folded = '';
create index item_calibration on item (calibration_due) where calibration_due <> '';

-- The runs of taps in brief, folded from their events. Size and flutes are the tap's; works_in is the material of the
-- run, or of the last run before it of which one was told; seq is the event after which it was folded.
create table run (
    mark     varchar(32) ${exact} not null references item (mark),
    number   bigint       not null,
    size     varchar(80)  not null,
    flutes   varchar(20)  not null,
    material varchar(80)  not null,
    works_in varchar(80)  not null,
    ending   varchar(12)  not null,
    seq      bigint       not null,
    told     text         not null,
    primary key (mark, number)
);
create index run_law on run (size, flutes, material, seq);
create index run_open on run (size, flutes, works_in) where ending = 'open';

create index event_correction on event (mark) where kind = 'corrected';
