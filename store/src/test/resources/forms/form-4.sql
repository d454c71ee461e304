SELECT pg_catalog.set_config('search_path', '', false);
CREATE TABLE public.event (
    mark character varying(32) NOT NULL COLLATE pg_catalog."C",
    seq bigint NOT NULL,
    at bigint NOT NULL,
    kind character varying(12) NOT NULL,
    by_whom character varying(80) NOT NULL,
    fields text NOT NULL,
    ticket character varying(64) NOT NULL
);
CREATE TABLE public.flyway_schema_history (
    installed_rank integer NOT NULL,
    version character varying(50),
    description character varying(200) NOT NULL,
    type character varying(20) NOT NULL,
    script character varying(1000) NOT NULL,
    checksum integer,
    installed_by character varying(100) NOT NULL,
    installed_on timestamp without time zone DEFAULT now() NOT NULL,
    execution_time integer NOT NULL,
    success boolean NOT NULL
);
CREATE TABLE public.item (
    mark character varying(32) NOT NULL COLLATE pg_catalog."C",
    kind character varying(12) NOT NULL,
    size character varying(80) NOT NULL,
    hand_set character varying(40) NOT NULL,
    card text NOT NULL,
    status character varying(12) NOT NULL,
    place character varying(200) NOT NULL,
    holes bigint NOT NULL,
    since_sharp bigint NOT NULL,
    sharpenings bigint NOT NULL,
    calibration_due character varying(10) NOT NULL,
    last_seq bigint NOT NULL,
    last_at bigint NOT NULL,
    folded text DEFAULT ''::text NOT NULL
);
CREATE TABLE public.job (
    number character varying(32) NOT NULL COLLATE pg_catalog."C",
    made_at bigint NOT NULL,
    made_by character varying(80) NOT NULL,
    fields text NOT NULL
);
CREATE TABLE public.job_done (
    mark character varying(32) NOT NULL COLLATE pg_catalog."C",
    ticket character varying(64) NOT NULL,
    job character varying(32) NOT NULL COLLATE pg_catalog."C",
    line bigint NOT NULL
);
CREATE TABLE public.job_hole (
    job character varying(32) NOT NULL COLLATE pg_catalog."C",
    line bigint NOT NULL,
    fields text NOT NULL
);
CREATE TABLE public.note (
    name character varying(40) NOT NULL,
    told text NOT NULL
);
CREATE TABLE public.person (
    name character varying(40) NOT NULL COLLATE pg_catalog."C",
    shown character varying(80) NOT NULL,
    role character varying(8) NOT NULL,
    password character varying(200) NOT NULL,
    active integer NOT NULL,
    since bigint NOT NULL
);
CREATE TABLE public.run (
    mark character varying(32) NOT NULL COLLATE pg_catalog."C",
    number bigint NOT NULL,
    size character varying(80) NOT NULL,
    flutes character varying(20) NOT NULL,
    material character varying(80) NOT NULL,
    works_in character varying(80) NOT NULL,
    ending character varying(12) NOT NULL,
    seq bigint NOT NULL,
    told text NOT NULL
);
CREATE TABLE public.sign_in (
    token character varying(64) NOT NULL,
    person character varying(40) NOT NULL COLLATE pg_catalog."C",
    since bigint NOT NULL,
    seen bigint NOT NULL
);
INSERT INTO public.event VALUES ('T-1', 1, 1772434800000, 'bought', 'Ida', '{"price":"18.50 EUR","supplier":"catalogue 4711"}', 'seq 1');
INSERT INTO public.event VALUES ('T-1', 2, 1772452800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 2');
INSERT INTO public.event VALUES ('T-1', 3, 1772470800000, 'tapped', 'Ida', '{"holes":"16","torque":"8 N·m"}', 'seq 3');
INSERT INTO public.event VALUES ('T-1', 4, 1772488800000, 'tapped', 'Ida', '{"holes":"55","material":"1045","depth":"16 mm"}', 'seq 4');
INSERT INTO public.event VALUES ('T-1', 5, 1772506800000, 'tapped', 'Ida', '{"holes":"5","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 5');
INSERT INTO public.event VALUES ('T-1', 6, 1772524800000, 'tapped', 'Ida', '{"holes":"12","material":"1045","depth":"16 mm","torque":"5 N·m"}', 'seq 6');
INSERT INTO public.event VALUES ('T-1', 7, 1772542800000, 'tapped', 'Ida', '{"holes":"53","material":"1045","depth":"16 mm"}', 'r7');
INSERT INTO public.event VALUES ('T-1', 8, 1772560800000, 'measured', 'Ida', '{"wear-land":"0.08 mm"}', 'seq 8');
INSERT INTO public.event VALUES ('T-1', 9, 1772578800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 9');
INSERT INTO public.event VALUES ('T-1', 10, 1772596800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 10');
INSERT INTO public.event VALUES ('T-1', 11, 1772614800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 11');
INSERT INTO public.event VALUES ('T-1', 12, 1772632800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 12');
INSERT INTO public.event VALUES ('T-1', 13, 1772650800000, 'tapped', 'Ida', '{"holes":"50","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 13');
INSERT INTO public.event VALUES ('T-1', 14, 1772668800000, 'tapped', 'Ida', '{"holes":"56","feel":"fresh"}', 'r14');
INSERT INTO public.event VALUES ('T-1', 15, 1772686800000, 'tapped', 'Ida', '{"holes":"15","material":"1045","depth":"16 mm"}', 'seq 15');
INSERT INTO public.event VALUES ('T-1', 16, 1772704800000, 'tapped', 'Ida', '{"holes":"5"}', 'seq 16');
INSERT INTO public.event VALUES ('T-1', 17, 1772614800000, 'tapped', 'Ida', '{"holes":"41","material":"1045","depth":"16 mm"}', 'seq 17');
INSERT INTO public.event VALUES ('T-1', 18, 1772740800000, 'measured', 'Ida', '{"wear-land":"0.25 mm"}', 'seq 18');
INSERT INTO public.event VALUES ('T-1', 19, 1772758800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 19');
INSERT INTO public.event VALUES ('T-1', 20, 1772776800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 20');
INSERT INTO public.event VALUES ('T-1', 21, 1772794800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'r21');
INSERT INTO public.event VALUES ('T-1', 22, 1772812800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 22');
INSERT INTO public.event VALUES ('T-1', 23, 1772830800000, 'tapped', 'Ida', '{"holes":"6","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 23');
INSERT INTO public.event VALUES ('T-1', 24, 1772848800000, 'tapped', 'Ida', '{"holes":"34","material":"1045","depth":"16 mm"}', 'seq 24');
INSERT INTO public.event VALUES ('T-1', 25, 1772866800000, 'tapped', 'Ida', '{"holes":"18","material":"1045","depth":"16 mm"}', 'seq 25');
INSERT INTO public.event VALUES ('T-1', 26, 1772776800000, 'tapped', 'Ida', '{"holes":"25","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 26');
INSERT INTO public.event VALUES ('T-1', 27, 1772902800000, 'tapped', 'Ida', '{"holes":"22","material":"1045","depth":"16 mm","torque":"4 N·m","feel":"fresh"}', 'seq 27');
INSERT INTO public.event VALUES ('T-1', 28, 1772920800000, 'measured', 'Ida', '{"wear-land":"0.20 mm"}', 'r28');
INSERT INTO public.event VALUES ('T-1', 29, 1772938800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 29');
INSERT INTO public.event VALUES ('T-2', 1, 1772956800000, 'bought', 'Ida', '{"price":"18.50 EUR","supplier":"catalogue 4711"}', 'seq 1');
INSERT INTO public.event VALUES ('T-2', 2, 1772974800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 2');
INSERT INTO public.event VALUES ('T-2', 3, 1772992800000, 'tapped', 'Ida', '{"holes":"19"}', 'seq 3');
INSERT INTO public.event VALUES ('T-2', 4, 1773010800000, 'tapped', 'Ida', '{"holes":"53","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 4');
INSERT INTO public.event VALUES ('T-2', 5, 1773028800000, 'tapped', 'Ida', '{"holes":"55","material":"1045","depth":"16 mm"}', 'seq 5');
INSERT INTO public.event VALUES ('T-2', 6, 1773046800000, 'tapped', 'Ida', '{"holes":"12","material":"1045","depth":"16 mm"}', 'r35');
INSERT INTO public.event VALUES ('T-2', 7, 1773064800000, 'tapped', 'Ida', '{"holes":"32","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 7');
INSERT INTO public.event VALUES ('T-2', 8, 1773082800000, 'measured', 'Ida', '{"wear-land":"0.08 mm"}', 'seq 8');
INSERT INTO public.event VALUES ('T-2', 9, 1773100800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 9');
INSERT INTO public.event VALUES ('T-2', 10, 1773118800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 10');
INSERT INTO public.event VALUES ('T-2', 11, 1773136800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 11');
INSERT INTO public.event VALUES ('T-2', 12, 1773046800000, 'issued', 'Ida', '{"to":"bench 3"}', 'seq 12');
INSERT INTO public.event VALUES ('T-2', 13, 1773172800000, 'tapped', 'Ida', '{"holes":"32","since":"Monday","material":"1045","depth":"16 mm","torque":"4 N·m"}', 'r42');
INSERT INTO public.event VALUES ('T-2', 14, 1773190800000, 'tapped', 'Ida', '{"holes":"30","since":"Monday","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 14');
INSERT INTO public.event VALUES ('T-2', 15, 1773208800000, 'tapped', 'Ida', '{"holes":"42","material":"1045","depth":"16 mm"}', 'seq 15');
INSERT INTO public.event VALUES ('T-2', 16, 1773226800000, 'tapped', 'Ida', '{"holes":"12","material":"1045","depth":"16 mm","torque":"4 N·m"}', 'seq 16');
INSERT INTO public.event VALUES ('T-2', 17, 1773244800000, 'tapped', 'Ida', '{"holes":"34","material":"1045","depth":"16 mm","feel":"fresh"}', 'seq 17');
INSERT INTO public.event VALUES ('T-2', 18, 1773262800000, 'measured', 'Ida', '{"wear-land":"0.19 mm"}', 'seq 18');
INSERT INTO public.event VALUES ('T-2', 19, 1773280800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 19');
INSERT INTO public.event VALUES ('T-2', 20, 1773298800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'r49');
INSERT INTO public.event VALUES ('T-2', 21, 1773208800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 21');
INSERT INTO public.event VALUES ('T-2', 22, 1773334800000, 'issued', 'Ida', '{"to":"bench 2"}', 'seq 22');
INSERT INTO public.event VALUES ('T-2', 23, 1773352800000, 'tapped', 'Ida', '{"holes":"48"}', 'seq 23');
INSERT INTO public.event VALUES ('T-2', 24, 1773370800000, 'tapped', 'Ida', '{"holes":"23","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 24');
INSERT INTO public.event VALUES ('T-2', 25, 1773388800000, 'tapped', 'Ida', '{"holes":"13","feel":"heavier"}', 'seq 25');
INSERT INTO public.event VALUES ('T-2', 26, 1773298800000, 'tapped', 'Ida', '{"holes":"35","material":"1045","depth":"16 mm","feel":"fresh"}', 'seq 26');
INSERT INTO public.event VALUES ('T-2', 27, 1773424800000, 'tapped', 'Ida', '{"holes":"4","material":"1045","depth":"16 mm","torque":"6 N·m","feel":"heavier"}', 'r56');
INSERT INTO public.event VALUES ('T-2', 28, 1773442800000, 'measured', 'Ida', '{"wear-land":"0.25 mm"}', 'seq 28');
INSERT INTO public.event VALUES ('T-2', 29, 1773460800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 29');
INSERT INTO public.event VALUES ('SET-A.1', 1, 1773370800000, 'bought', 'Ida', '{"price":"18.50 EUR","supplier":"catalogue 4711"}', 'seq 1');
INSERT INTO public.event VALUES ('SET-A.1', 2, 1773496800000, 'issued', 'Ida', '{"to":"bench 3"}', 'seq 2');
INSERT INTO public.event VALUES ('SET-A.1', 3, 1773406800000, 'tapped', 'Ida', '{"holes":"14","material":"1045","depth":"16 mm","torque":"6 N·m","feel":"heavier"}', 'seq 3');
INSERT INTO public.event VALUES ('SET-A.1', 4, 1773532800000, 'tapped', 'Ida', '{"holes":"3","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 4');
INSERT INTO public.event VALUES ('SET-A.1', 5, 1773550800000, 'tapped', 'Ida', '{"holes":"34","material":"1045","depth":"16 mm"}', 'r63');
INSERT INTO public.event VALUES ('SET-A.1', 6, 1773460800000, 'tapped', 'Ida', '{"holes":"12"}', 'seq 6');
INSERT INTO public.event VALUES ('SET-A.1', 7, 1773586800000, 'tapped', 'Ida', '{"holes":"39","torque":"7 N·m","feel":"fresh"}', 'seq 7');
INSERT INTO public.event VALUES ('SET-A.1', 8, 1773604800000, 'measured', 'Ida', '{"wear-land":"0.24 mm"}', 'seq 8');
INSERT INTO public.event VALUES ('SET-A.1', 9, 1773622800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 9');
INSERT INTO public.event VALUES ('SET-A.1', 10, 1773640800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 10');
INSERT INTO public.event VALUES ('SET-A.1', 11, 1773658800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 11');
INSERT INTO public.event VALUES ('SET-A.1', 12, 1773676800000, 'issued', 'Ida', '{"to":"bench 3"}', 'r70');
INSERT INTO public.event VALUES ('SET-A.1', 13, 1773694800000, 'tapped', 'Ida', '{"holes":"29","material":"1045","depth":"16 mm","feel":"fresh"}', 'seq 13');
INSERT INTO public.event VALUES ('SET-A.1', 14, 1773712800000, 'tapped', 'Ida', '{"holes":"45"}', 'seq 14');
INSERT INTO public.event VALUES ('SET-A.1', 15, 1773730800000, 'tapped', 'Ida', '{"holes":"3","material":"1045","depth":"16 mm"}', 'seq 15');
INSERT INTO public.event VALUES ('SET-A.1', 16, 1773748800000, 'tapped', 'Ida', '{"holes":"60"}', 'seq 16');
INSERT INTO public.event VALUES ('SET-A.1', 17, 1773766800000, 'tapped', 'Ida', '{"holes":"35","since":"Monday","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 17');
INSERT INTO public.event VALUES ('SET-A.1', 18, 1773784800000, 'measured', 'Ida', '{"wear-land":"0.11 mm"}', 'seq 18');
INSERT INTO public.event VALUES ('SET-A.1', 19, 1773694800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'r77');
INSERT INTO public.event VALUES ('SET-A.1', 20, 1773820800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 20');
INSERT INTO public.event VALUES ('SET-A.1', 21, 1773838800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 21');
INSERT INTO public.event VALUES ('SET-A.1', 22, 1773856800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 22');
INSERT INTO public.event VALUES ('SET-A.1', 23, 1773874800000, 'tapped', 'Ida', '{"holes":"2","material":"1045","depth":"16 mm","torque":"8 N·m"}', 'seq 23');
INSERT INTO public.event VALUES ('SET-A.1', 24, 1773892800000, 'tapped', 'Ida', '{"holes":"18"}', 'seq 24');
INSERT INTO public.event VALUES ('SET-A.1', 25, 1773910800000, 'tapped', 'Ida', '{"holes":"50","material":"1045","depth":"16 mm","torque":"4 N·m"}', 'seq 25');
INSERT INTO public.event VALUES ('SET-A.1', 26, 1773820800000, 'tapped', 'Ida', '{"holes":"60","material":"1045","depth":"16 mm"}', 'r84');
INSERT INTO public.event VALUES ('SET-A.1', 27, 1773946800000, 'tapped', 'Ida', '{"holes":"17"}', 'seq 27');
INSERT INTO public.event VALUES ('SET-A.1', 28, 1773964800000, 'measured', 'Ida', '{"wear-land":"0.22 mm"}', 'seq 28');
INSERT INTO public.event VALUES ('SET-A.1', 29, 1773982800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 29');
INSERT INTO public.event VALUES ('SET-A.2', 1, 1774000800000, 'bought', 'Ida', '{"price":"18.50 EUR","supplier":"catalogue 4711"}', 'seq 1');
INSERT INTO public.event VALUES ('SET-A.2', 2, 1773910800000, 'issued', 'Ida', '{"to":"bench 2"}', 'seq 2');
INSERT INTO public.event VALUES ('SET-A.2', 3, 1774036800000, 'tapped', 'Ida', '{"holes":"34","material":"1045","depth":"16 mm","torque":"5 N·m"}', 'seq 3');
INSERT INTO public.event VALUES ('SET-A.2', 4, 1773946800000, 'tapped', 'Ida', '{"holes":"39","material":"1045","depth":"16 mm","torque":"8 N·m"}', 'r91');
INSERT INTO public.event VALUES ('SET-A.2', 5, 1773964800000, 'tapped', 'Ida', '{"holes":"17","since":"Monday","material":"1045","depth":"16 mm","feel":"heavy"}', 'seq 5');
INSERT INTO public.event VALUES ('SET-A.2', 6, 1774090800000, 'tapped', 'Ida', '{"holes":"17","material":"1045","depth":"16 mm"}', 'seq 6');
INSERT INTO public.event VALUES ('SET-A.2', 7, 1774108800000, 'tapped', 'Ida', '{"holes":"57"}', 'seq 7');
INSERT INTO public.event VALUES ('SET-A.2', 8, 1774126800000, 'measured', 'Ida', '{"wear-land":"0.27 mm"}', 'seq 8');
INSERT INTO public.event VALUES ('SET-A.2', 9, 1774144800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 9');
INSERT INTO public.event VALUES ('SET-A.2', 10, 1774162800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 10');
INSERT INTO public.event VALUES ('SET-A.2', 11, 1774180800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'r98');
INSERT INTO public.event VALUES ('SET-A.2', 12, 1774198800000, 'issued', 'Ida', '{"to":"bench 3"}', 'seq 12');
INSERT INTO public.event VALUES ('SET-A.2', 13, 1774216800000, 'tapped', 'Ida', '{"holes":"49","material":"1045","depth":"16 mm","torque":"7 N·m"}', 'seq 13');
INSERT INTO public.event VALUES ('SET-A.2', 14, 1774234800000, 'tapped', 'Ida', '{"holes":"23","material":"1045","depth":"16 mm"}', 'seq 14');
INSERT INTO public.event VALUES ('SET-A.2', 15, 1774252800000, 'tapped', 'Ida', '{"holes":"48"}', 'seq 15');
INSERT INTO public.event VALUES ('SET-A.2', 16, 1774270800000, 'tapped', 'Ida', '{"holes":"53","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 16');
INSERT INTO public.event VALUES ('SET-A.2', 17, 1774288800000, 'tapped', 'Ida', '{"holes":"15","material":"1045","depth":"16 mm"}', 'seq 17');
INSERT INTO public.event VALUES ('SET-A.2', 18, 1774198800000, 'measured', 'Ida', '{"wear-land":"0.20 mm"}', 'r105');
INSERT INTO public.event VALUES ('SET-A.2', 19, 1774324800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 19');
INSERT INTO public.event VALUES ('SET-A.2', 20, 1774342800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 20');
INSERT INTO public.event VALUES ('SET-A.2', 21, 1774252800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 21');
INSERT INTO public.event VALUES ('SET-A.2', 22, 1774378800000, 'issued', 'Ida', '{"to":"bench 2"}', 'seq 22');
INSERT INTO public.event VALUES ('SET-A.2', 23, 1774396800000, 'tapped', 'Ida', '{"holes":"25","material":"1045","depth":"16 mm","feel":"fresh"}', 'seq 23');
INSERT INTO public.event VALUES ('SET-A.2', 24, 1774414800000, 'tapped', 'Ida', '{"holes":"15","torque":"6 N·m","feel":"heavier"}', 'seq 24');
INSERT INTO public.event VALUES ('SET-A.2', 25, 1774324800000, 'tapped', 'Ida', '{"holes":"19","material":"1045","depth":"16 mm"}', 'r112');
INSERT INTO public.event VALUES ('SET-A.2', 26, 1774450800000, 'tapped', 'Ida', '{"holes":"60","material":"1045","depth":"16 mm","torque":"5 N·m"}', 'seq 26');
INSERT INTO public.event VALUES ('SET-A.2', 27, 1774468800000, 'tapped', 'Ida', '{"holes":"1"}', 'seq 27');
INSERT INTO public.event VALUES ('SET-A.2', 28, 1774486800000, 'measured', 'Ida', '{"wear-land":"0.24 mm"}', 'seq 28');
INSERT INTO public.event VALUES ('SET-A.2', 29, 1774504800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 29');
INSERT INTO public.event VALUES ('SET-A.3', 1, 1774522800000, 'bought', 'Ida', '{"price":"18.50 EUR","supplier":"catalogue 4711"}', 'seq 1');
INSERT INTO public.event VALUES ('SET-A.3', 2, 1774540800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 2');
INSERT INTO public.event VALUES ('SET-A.3', 3, 1774558800000, 'tapped', 'Ida', '{"holes":"53","since":"Monday","material":"1045","depth":"16 mm"}', 'r119');
INSERT INTO public.event VALUES ('SET-A.3', 4, 1774576800000, 'tapped', 'Ida', '{"holes":"54","material":"1045","depth":"16 mm","torque":"8 N·m"}', 'seq 4');
INSERT INTO public.event VALUES ('SET-A.3', 5, 1774594800000, 'tapped', 'Ida', '{"holes":"29","material":"1045","depth":"16 mm"}', 'seq 5');
INSERT INTO public.event VALUES ('SET-A.3', 6, 1774612800000, 'tapped', 'Ida', '{"holes":"55","material":"1045","depth":"16 mm"}', 'seq 6');
INSERT INTO public.event VALUES ('SET-A.3', 7, 1774630800000, 'tapped', 'Ida', '{"holes":"32","material":"1045","depth":"16 mm"}', 'seq 7');
INSERT INTO public.event VALUES ('SET-A.3', 8, 1774648800000, 'measured', 'Ida', '{"wear-land":"0.18 mm"}', 'seq 8');
INSERT INTO public.event VALUES ('SET-A.3', 9, 1774558800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 9');
INSERT INTO public.event VALUES ('SET-A.3', 10, 1774684800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'r126');
INSERT INTO public.event VALUES ('SET-A.3', 11, 1774702800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 11');
INSERT INTO public.event VALUES ('SET-A.3', 12, 1774720800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 12');
INSERT INTO public.event VALUES ('SET-A.3', 13, 1774738800000, 'tapped', 'Ida', '{"holes":"51","material":"1045","depth":"16 mm"}', 'seq 13');
INSERT INTO public.event VALUES ('SET-A.3', 14, 1774756800000, 'tapped', 'Ida', '{"holes":"53","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 14');
INSERT INTO public.event VALUES ('SET-A.3', 15, 1774774800000, 'tapped', 'Ida', '{"holes":"38"}', 'seq 15');
INSERT INTO public.event VALUES ('SET-A.3', 16, 1774792800000, 'tapped', 'Ida', '{"holes":"21","material":"1045","depth":"16 mm","feel":"heavier"}', 'seq 16');
INSERT INTO public.event VALUES ('SET-A.3', 17, 1774810800000, 'tapped', 'Ida', '{"holes":"56","material":"1045","depth":"16 mm"}', 'r133');
INSERT INTO public.event VALUES ('SET-A.3', 18, 1774828800000, 'measured', 'Ida', '{"wear-land":"0.27 mm"}', 'seq 18');
INSERT INTO public.event VALUES ('SET-A.3', 19, 1774846800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 19');
INSERT INTO public.event VALUES ('SET-A.3', 20, 1774864800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 20');
INSERT INTO public.event VALUES ('SET-A.3', 21, 1774882800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 21');
INSERT INTO public.event VALUES ('SET-A.3', 22, 1774900800000, 'issued', 'Ida', '{"to":"bench 3"}', 'seq 22');
INSERT INTO public.event VALUES ('SET-A.3', 23, 1774918800000, 'tapped', 'Ida', '{"holes":"14","material":"1045","depth":"16 mm"}', 'seq 23');
INSERT INTO public.event VALUES ('SET-A.3', 24, 1774936800000, 'tapped', 'Ida', '{"holes":"2"}', 'r140');
INSERT INTO public.event VALUES ('SET-A.3', 25, 1774954800000, 'tapped', 'Ida', '{"holes":"20","material":"1045","depth":"16 mm"}', 'seq 25');
INSERT INTO public.event VALUES ('SET-A.3', 26, 1774972800000, 'tapped', 'Ida', '{"holes":"20","since":"Monday"}', 'seq 26');
INSERT INTO public.event VALUES ('SET-A.3', 27, 1774990800000, 'tapped', 'Ida', '{"holes":"29","material":"1045","depth":"16 mm"}', 'seq 27');
INSERT INTO public.event VALUES ('SET-A.3', 28, 1774900800000, 'measured', 'Ida', '{"wear-land":"0.17 mm"}', 'seq 28');
INSERT INTO public.event VALUES ('SET-A.3', 29, 1775026800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 29');
INSERT INTO public.event VALUES ('T0001-W', 1, 1775044800000, 'bought', 'Ida', '{"price":"18.50 EUR","supplier":"catalogue 4711"}', 'seq 1');
INSERT INTO public.event VALUES ('T0001-W', 2, 1775062800000, 'issued', 'Ida', '{"to":"bench 2"}', 'r147');
INSERT INTO public.event VALUES ('T0001-W', 3, 1775080800000, 'tapped', 'Ida', '{"holes":"17","material":"1045","depth":"16 mm"}', 'seq 3');
INSERT INTO public.event VALUES ('T0001-W', 4, 1775098800000, 'tapped', 'Ida', '{"holes":"55"}', 'seq 4');
INSERT INTO public.event VALUES ('T0001-W', 5, 1775116800000, 'tapped', 'Ida', '{"holes":"17","material":"1045","depth":"16 mm"}', 'seq 5');
INSERT INTO public.event VALUES ('T0001-W', 6, 1775026800000, 'tapped', 'Ida', '{"holes":"1","material":"1045","depth":"16 mm"}', 'seq 6');
INSERT INTO public.event VALUES ('T0001-W', 7, 1775152800000, 'tapped', 'Ida', '{"holes":"33","material":"1045","depth":"16 mm"}', 'seq 7');
INSERT INTO public.event VALUES ('T0001-W', 8, 1775170800000, 'measured', 'Ida', '{"wear-land":"0.22 mm"}', 'seq 8');
INSERT INTO public.event VALUES ('T0001-W', 9, 1775188800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'r154');
INSERT INTO public.event VALUES ('T0001-W', 10, 1775206800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 10');
INSERT INTO public.event VALUES ('T0001-W', 11, 1775224800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 11');
INSERT INTO public.event VALUES ('T0001-W', 12, 1775242800000, 'issued', 'Ida', '{"to":"bench 2"}', 'seq 12');
INSERT INTO public.event VALUES ('T0001-W', 13, 1775260800000, 'tapped', 'Ida', '{"holes":"30","material":"1045","depth":"16 mm"}', 'seq 13');
INSERT INTO public.event VALUES ('T0001-W', 14, 1775170800000, 'tapped', 'Ida', '{"holes":"31","material":"1045","depth":"16 mm"}', 'seq 14');
INSERT INTO public.event VALUES ('T0001-W', 15, 1775296800000, 'tapped', 'Ida', '{"holes":"3","material":"1045","depth":"16 mm"}', 'seq 15');
INSERT INTO public.event VALUES ('T0001-W', 16, 1775314800000, 'tapped', 'Ida', '{"holes":"49","material":"1045","depth":"16 mm","torque":"8 N·m","feel":"fresh"}', 'r161');
INSERT INTO public.event VALUES ('T0001-W', 17, 1775332800000, 'tapped', 'Ida', '{"holes":"39","since":"Monday","material":"1045","depth":"16 mm","feel":"fresh"}', 'seq 17');
INSERT INTO public.event VALUES ('T0001-W', 18, 1775350800000, 'measured', 'Ida', '{"wear-land":"0.09 mm"}', 'seq 18');
INSERT INTO public.event VALUES ('T0001-W', 19, 1775368800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 19');
INSERT INTO public.event VALUES ('T0001-W', 20, 1775386800000, 'sharpened', 'Ida', '{"way":"chamfer","stock":"0.3 mm","wheel":"W-1"}', 'seq 20');
INSERT INTO public.event VALUES ('T0001-W', 21, 1775404800000, 'inspected', 'Ida', '{"passed":"yes","note":"tooth 2 stands 0.01 high"}', 'seq 21');
INSERT INTO public.event VALUES ('T0001-W', 22, 1775422800000, 'issued', 'Ida', '{"to":"bench 1"}', 'seq 22');
INSERT INTO public.event VALUES ('T0001-W', 23, 1775440800000, 'tapped', 'Ida', '{"holes":"7","since":"Monday","material":"1045","depth":"16 mm"}', 'r168');
INSERT INTO public.event VALUES ('T0001-W', 24, 1775350800000, 'tapped', 'Ida', '{"holes":"8","material":"1045","depth":"16 mm","feel":"fresh"}', 'seq 24');
INSERT INTO public.event VALUES ('T0001-W', 25, 1775476800000, 'tapped', 'Ida', '{"holes":"2","since":"Monday","material":"1045","depth":"16 mm"}', 'seq 25');
INSERT INTO public.event VALUES ('T0001-W', 26, 1775386800000, 'tapped', 'Ida', '{"holes":"56","material":"1045","depth":"16 mm"}', 'seq 26');
INSERT INTO public.event VALUES ('T0001-W', 27, 1775512800000, 'tapped', 'Ida', '{"holes":"48","material":"1045","depth":"16 mm"}', 'seq 27');
INSERT INTO public.event VALUES ('T0001-W', 28, 1775530800000, 'measured', 'Ida', '{"wear-land":"0.11 mm"}', 'seq 28');
INSERT INTO public.event VALUES ('T0001-W', 29, 1775548800000, 'returned', 'Ida', '{"place":"drawer 3"}', 'seq 29');
INSERT INTO public.event VALUES ('T-1', 30, 1775458800000, 'tapped', 'Ida', '{"holes":"4000","material":"1045"}', 'r175');
INSERT INTO public.event VALUES ('T-1', 31, 1775476800000, 'corrected', 'Ida', '{"takes-back":"30","because":"400"}', 'seq 31');
INSERT INTO public.event VALUES ('T-2', 30, 1775602800000, 'broken', 'Ida', '{"when":"reversal","part-lost":"yes"}', 'seq 30');
INSERT INTO public.event VALUES ('G-1', 1, 1775620800000, 'calibrated', 'Ida', '{"passed":"yes","due":"2027-03-01"}', 'seq 1');
INSERT INTO public.event VALUES ('W-1', 1, 1775530800000, 'moved', 'Ida', '{"place":"“grinder” drawer, left – ½ full"}', 'seq 1');
INSERT INTO public.event VALUES ('D-1', 1, 1775548800000, 'sharpened', 'Ida', '{"way":"face"}', 'seq 1');
INSERT INTO public.event VALUES ('D-1', 2, 1775674800000, 'scrapped', 'Ida', '{"because":"too short"}', 'seq 2');
INSERT INTO public.event VALUES ('SET-A.1', 30, 1780210800000, 'tapped', 'Ida', '{"holes":"5","material":"C45","depth":"16 mm","note":"J0001-J line 1"}', 'done 1');
INSERT INTO public.event VALUES ('SET-A.2', 30, 1780210800000, 'tapped', 'Ida', '{"holes":"3","material":"C45","depth":"16 mm","note":"J0001-J line 1"}', 'done 2');
INSERT INTO public.event VALUES ('SET-A.2', 31, 1780210800000, 'corrected', 'Ida', '{"takes-back":"30","because":"wrong tap"}', 'seq 31');
INSERT INTO public.flyway_schema_history VALUES (1, '1', 'crib', 'SQL', 'V1__crib.sql', -2112318325, 'shop', '2026-12-01 03:15:51.22666', 24, true);
INSERT INTO public.flyway_schema_history VALUES (2, '2', 'people', 'SQL', 'V2__people.sql', 1843362198, 'shop', '2026-12-01 03:15:51.266827', 7, true);
INSERT INTO public.flyway_schema_history VALUES (3, '3', 'runs', 'SQL', 'V3__runs.sql', 1771994424, 'shop', '2026-12-01 03:15:51.283033', 12, true);
INSERT INTO public.flyway_schema_history VALUES (4, '4', 'job', 'SQL', 'V4__job.sql', -1975387207, 'shop', '2026-12-01 03:15:51.315481', 28, true);
INSERT INTO public.item VALUES ('SET-A.2', 'tap', 'M8x1.25', 'SET-A', '{"thread":"M8x1.25-6H"}', 'on_hand', 'drawer 3', 472, 101, 2, '', 31, 1780210800000, '{"wear":0.24}');
INSERT INTO public.item VALUES ('T0001-W', 'tap', '1/4-20 UNC', '', '{"thread":"1/4-20 UNC-2B","flutes.count":"3","flutes.kind":"straight"}', 'on_hand', 'drawer 3', 396, 113, 2, '', 29, 1775548800000, '{"about":true,"wear":0.11,"passed":true}');
INSERT INTO public.item VALUES ('SET-A.3', 'tap', 'M8x1.25', 'SET-A', '{"thread":"M8x1.25-6H"}', 'on_hand', 'drawer 3', 527, 85, 2, '', 29, 1775026800000, '{"about":true,"wear":0.17,"passed":true}');
INSERT INTO public.item VALUES ('T-1', 'tap', 'M8x1.25', '', '{"thread":"M8x1.25-6H"}', 'on_hand', 'drawer 3', 413, 105, 2, '', 31, 1775476800000, '{"wear":0.2,"passed":true}');
INSERT INTO public.item VALUES ('T-2', 'tap', 'M8x1.25', '', '{"thread":"M8x1.25-6H"}', 'broken', 'drawer 3', 444, 123, 2, '', 30, 1775602800000, '{"about":true,"wear":0.25}');
INSERT INTO public.item VALUES ('G-1', 'gauge', 'M8x1.25', '', '{"gauge":"GO plug","thread":"M8x1.25-6H"}', 'on_hand', '', 0, 0, 0, '2027-03-01', 1, 1775620800000, '{"passed":true}');
INSERT INTO public.item VALUES ('W-1', 'wheel', '', '', '{"wheel.diameter":"150 mm","wheel.marking":"A80J6V","wheel.markedSpeed":"4000 rev/min"}', 'on_hand', '“grinder” drawer, left – ½ full', 0, 0, 0, '', 1, 1775530800000, '{}');
INSERT INTO public.item VALUES ('D-1', 'drill', '6.8 mm', '', '{"name":"for M8","diameter":"6.8 mm"}', 'scrapped', '', 0, 0, 1, '', 2, 1775674800000, '{}');
INSERT INTO public.item VALUES ('SET-A.1', 'tap', 'M8x1.25', 'SET-A', '{"thread":"M8x1.25-6H"}', 'on_hand', 'drawer 3', 426, 152, 2, '', 30, 1780210800000, '{"wear":0.22,"passed":true}');
INSERT INTO public.job VALUES ('J0001-J', 1772434800000, 'Ida', '{"name":"Bearing block","drive":"mill"}');
INSERT INTO public.job_done VALUES ('SET-A.1', 'done 1', 'J0001-J', 1);
INSERT INTO public.job_done VALUES ('SET-A.2', 'done 2', 'J0001-J', 1);
INSERT INTO public.job_hole VALUES ('J0001-J', 1, '{"callout":"M8x1.25-6H","material":"C45","depth":"16 mm","kind":"blind","count":"12"}');
INSERT INTO public.note VALUES ('next-tap', '1');
INSERT INTO public.note VALUES ('next-job', '1');
INSERT INTO public.person VALUES ('ida', 'Ida Marsh', 'keep', '$argon2id$v=19$m=19456,t=2,p=1$xreactzWjbUbkXdWcQjr8g$44QY2A+x0WqnWaQy5t6TBeWQVWYc1+NGrm6cNMPuBWE', 1, 1772434800000);
INSERT INTO public.run VALUES ('T-2', 1, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 26, '{"start":"NEW","from":1772992800000,"about":true,"cut":{"":[19,0,0],"1045":[152,152,2432000000]},"wear":0.08,"wearAfter":{"":[19,0,0],"1045":[152,152,2432000000]},"feel":"HEAVIER","feelAfter":{"":[19,0,0],"1045":[152,152,2432000000]}}');
INSERT INTO public.run VALUES ('T-2', 2, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 26, '{"start":"SHARPENED","from":1773118800000,"about":true,"cut":{"1045":[150,150,2400000000]},"wear":0.19,"wearAfter":{"1045":[150,150,2400000000]},"torque":4.0,"material":"1045","depth":16.0,"torqueOf":{"1045":[32,32,512000000]},"later":4.0,"laterAfter":{"1045":[116,116,1856000000]},"feel":"FRESH","feelAfter":{"1045":[150,150,2400000000]}}');
INSERT INTO public.run VALUES ('SET-A.1', 1, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 26, '{"start":"NEW","from":1773406800000,"about":true,"cut":{"1045":[51,51,816000000],"":[51,0,0]},"wear":0.24,"wearAfter":{"1045":[51,51,816000000],"":[51,0,0]},"torque":6.0,"material":"1045","depth":16.0,"torqueOf":{"1045":[14,14,224000000]},"feel":"FRESH","feelAfter":{"1045":[51,51,816000000],"":[51,0,0]}}');
INSERT INTO public.run VALUES ('SET-A.1', 2, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 26, '{"start":"SHARPENED","from":1773640800000,"about":true,"cut":{"1045":[67,67,1072000000],"":[105,0,0]},"wear":0.11,"wearAfter":{"1045":[67,67,1072000000],"":[105,0,0]},"feel":"HEAVIER","feelAfter":{"1045":[67,67,1072000000],"":[105,0,0]}}');
INSERT INTO public.run VALUES ('SET-A.3', 1, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 28, '{"start":"NEW","from":1774558800000,"about":true,"cut":{"1045":[223,223,3568000000]},"wear":0.18,"wearAfter":{"1045":[223,223,3568000000]}}');
INSERT INTO public.run VALUES ('SET-A.3', 2, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 28, '{"start":"SHARPENED","from":1774684800000,"about":true,"cut":{"1045":[181,181,2896000000],"":[38,0,0]},"wear":0.27,"wearAfter":{"1045":[181,181,2896000000],"":[38,0,0]},"feel":"HEAVIER","feelAfter":{"1045":[125,125,2000000000],"":[38,0,0]}}');
INSERT INTO public.run VALUES ('SET-A.3', 3, 'M8x1.25', 'straight', '1045', '1045', 'open', 28, '{"start":"SHARPENED","from":1774864800000,"about":true,"cut":{"1045":[63,63,1008000000],"":[22,0,0]}}');
INSERT INTO public.run VALUES ('T0001-W', 1, '1/4-20 UNC', 'straight', '1045', '1045', 'sharpened', 26, '{"start":"UNKNOWN","from":1775026800000,"cut":{"1045":[99,99,1584000000],"":[55,0,0]},"wear":0.22,"wearAfter":{"1045":[68,68,1088000000],"":[55,0,0]}}');
INSERT INTO public.run VALUES ('T0001-W', 2, '1/4-20 UNC', 'straight', '1045', '1045', 'sharpened', 26, '{"start":"SHARPENED","from":1775206800000,"about":true,"cut":{"1045":[129,129,2064000000]},"wear":0.09,"wearAfter":{"1045":[121,121,1936000000]},"feel":"FRESH","feelAfter":{"1045":[129,129,2064000000]}}');
INSERT INTO public.run VALUES ('T0001-W', 3, '1/4-20 UNC', 'straight', '1045', '1045', 'open', 28, '{"start":"SHARPENED","from":1775386800000,"about":true,"cut":{"1045":[113,113,1808000000]},"wear":0.11,"wearAfter":{"1045":[113,113,1808000000]}}');
INSERT INTO public.run VALUES ('T-1', 1, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 31, '{"start":"NEW","from":1772470800000,"about":true,"cut":{"":[16,0,0],"1045":[125,125,2000000000]},"wear":0.08,"wearAfter":{"":[16,0,0],"1045":[125,125,2000000000]},"torque":8.0,"torqueOf":{"":[16,0,0]}}');
INSERT INTO public.run VALUES ('T-1', 2, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 31, '{"start":"SHARPENED","from":1772596800000,"cut":{"1045":[106,106,1696000000],"":[61,0,0]},"wear":0.25,"wearAfter":{"1045":[106,106,1696000000],"":[61,0,0]},"feel":"FRESH","feelAfter":{"1045":[91,91,1456000000],"":[56,0,0]}}');
INSERT INTO public.run VALUES ('T-1', 3, 'M8x1.25', 'straight', '1045', '1045', 'open', 31, '{"start":"SHARPENED","from":1772776800000,"cut":{"1045":[105,105,1680000000]},"wear":0.2,"wearAfter":{"1045":[105,105,1680000000]},"feel":"FRESH","feelAfter":{"1045":[105,105,1680000000]}}');
INSERT INTO public.run VALUES ('T-2', 3, 'M8x1.25', 'straight', '1045', '1045', 'broken', 30, '{"start":"SHARPENED","from":1773298800000,"about":true,"cut":{"1045":[62,62,992000000],"":[61,0,0]},"wear":0.25,"wearAfter":{"1045":[62,62,992000000],"":[61,0,0]},"feel":"HEAVIER","feelAfter":{"1045":[62,62,992000000],"":[61,0,0]}}');
INSERT INTO public.run VALUES ('SET-A.1', 3, 'M8x1.25', 'straight', '1045', '1045', 'open', 30, '{"start":"SHARPENED","from":1773820800000,"cut":{"1045":[117,117,1872000000],"":[35,0,0]},"wear":0.22,"wearAfter":{"1045":[112,112,1792000000],"":[35,0,0]}}');
INSERT INTO public.run VALUES ('SET-A.2', 1, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 31, '{"start":"UNKNOWN","from":1773946800000,"about":true,"cut":{"1045":[107,107,1712000000],"":[57,0,0]},"wear":0.27,"wearAfter":{"1045":[107,107,1712000000],"":[57,0,0]},"torque":8.0,"material":"1045","depth":16.0,"torqueOf":{"1045":[39,39,624000000]},"later":5.0,"laterAfter":{"1045":[90,90,1440000000]},"feel":"HEAVY","feelAfter":{"1045":[56,56,896000000]}}');
INSERT INTO public.run VALUES ('SET-A.2', 2, 'M8x1.25', 'straight', '1045', '1045', 'sharpened', 31, '{"start":"SHARPENED","from":1774162800000,"about":true,"cut":{"1045":[159,159,2544000000],"":[48,0,0]},"torque":7.0,"material":"1045","depth":16.0,"torqueOf":{"1045":[49,49,784000000]}}');
INSERT INTO public.run VALUES ('SET-A.2', 3, 'M8x1.25', 'straight', '1045', '1045', 'open', 31, '{"start":"SHARPENED","from":1774342800000,"cut":{"1045":[85,85,1360000000],"":[16,0,0]},"wear":0.24,"wearAfter":{"1045":[85,85,1360000000],"":[16,0,0]},"feel":"HEAVIER","feelAfter":{"1045":[25,25,400000000],"":[15,0,0]}}');
ALTER TABLE ONLY public.event
    ADD CONSTRAINT event_pkey PRIMARY KEY (mark, seq);
ALTER TABLE ONLY public.flyway_schema_history
    ADD CONSTRAINT flyway_schema_history_pk PRIMARY KEY (installed_rank);
ALTER TABLE ONLY public.item
    ADD CONSTRAINT item_pkey PRIMARY KEY (mark);
ALTER TABLE ONLY public.job_done
    ADD CONSTRAINT job_done_pkey PRIMARY KEY (mark, ticket);
ALTER TABLE ONLY public.job_hole
    ADD CONSTRAINT job_hole_pkey PRIMARY KEY (job, line);
ALTER TABLE ONLY public.job
    ADD CONSTRAINT job_pkey PRIMARY KEY (number);
ALTER TABLE ONLY public.note
    ADD CONSTRAINT note_pkey PRIMARY KEY (name);
ALTER TABLE ONLY public.person
    ADD CONSTRAINT person_pkey PRIMARY KEY (name);
ALTER TABLE ONLY public.run
    ADD CONSTRAINT run_pkey PRIMARY KEY (mark, number);
ALTER TABLE ONLY public.sign_in
    ADD CONSTRAINT sign_in_pkey PRIMARY KEY (token);
CREATE INDEX event_correction ON public.event USING btree (mark) WHERE ((kind)::text = 'corrected'::text);
CREATE UNIQUE INDEX event_ticket ON public.event USING btree (mark, ticket);
CREATE INDEX flyway_schema_history_s_idx ON public.flyway_schema_history USING btree (success);
CREATE INDEX item_calibration ON public.item USING btree (calibration_due) WHERE ((calibration_due)::text <> ''::text);
CREATE INDEX item_set ON public.item USING btree (hand_set);
CREATE INDEX item_size ON public.item USING btree (kind, size);
CREATE INDEX item_unfolded ON public.item USING btree (mark) WHERE (folded = ''::text);
CREATE INDEX job_done_line ON public.job_done USING btree (job, line);
CREATE INDEX job_made ON public.job USING btree (made_at);
CREATE INDEX run_law ON public.run USING btree (size, flutes, material, seq);
CREATE INDEX run_open ON public.run USING btree (size, flutes, works_in) WHERE ((ending)::text = 'open'::text);
CREATE INDEX sign_in_person ON public.sign_in USING btree (person);
ALTER TABLE ONLY public.event
    ADD CONSTRAINT event_mark_fkey FOREIGN KEY (mark) REFERENCES public.item(mark);
ALTER TABLE ONLY public.job_done
    ADD CONSTRAINT job_done_job_line_fkey FOREIGN KEY (job, line) REFERENCES public.job_hole(job, line);
ALTER TABLE ONLY public.job_done
    ADD CONSTRAINT job_done_mark_fkey FOREIGN KEY (mark) REFERENCES public.item(mark);
ALTER TABLE ONLY public.job_hole
    ADD CONSTRAINT job_hole_job_fkey FOREIGN KEY (job) REFERENCES public.job(number);
ALTER TABLE ONLY public.run
    ADD CONSTRAINT run_mark_fkey FOREIGN KEY (mark) REFERENCES public.item(mark);
ALTER TABLE ONLY public.sign_in
    ADD CONSTRAINT sign_in_person_fkey FOREIGN KEY (person) REFERENCES public.person(name);
