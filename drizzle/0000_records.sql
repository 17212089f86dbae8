CREATE TABLE `motor` (
	`id` text PRIMARY KEY NOT NULL,
	`label` text NOT NULL,
	`version` integer NOT NULL,
	`demo` integer DEFAULT false NOT NULL,
	`created_at` text NOT NULL,
	`updated_at` text NOT NULL,
	`deleted_at` text,
	`record` text NOT NULL,
	`shaft_class` text,
	`steering` text,
	`strokes` integer,
	`power_kw` real,
	`mass_kg` real,
	CONSTRAINT "motor_record_is_json" CHECK(json_valid("motor"."record")),
	CONSTRAINT "motor_version_counts" CHECK("motor"."version" >= 1)
);
--> statement-breakpoint
CREATE INDEX `motor_by_label` ON `motor` ("label" collate nocase,`id`);--> statement-breakpoint
CREATE TABLE `observation` (
	`sequence` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`id` text NOT NULL,
	`object_kind` text NOT NULL,
	`object_id` text NOT NULL,
	`key` text NOT NULL,
	`value` text NOT NULL,
	`plus_minus` real,
	`how` text NOT NULL,
	`raw` text,
	`taken_at` text NOT NULL,
	`by` text,
	CONSTRAINT "observation_kind" CHECK("observation"."object_kind" in ('motor', 'stern')),
	CONSTRAINT "observation_value_is_json" CHECK(json_valid("observation"."value")),
	CONSTRAINT "observation_how" CHECK("observation"."how" in ('measured', 'declared', 'estimated'))
);
--> statement-breakpoint
CREATE UNIQUE INDEX `observation_id_unique` ON `observation` (`id`);--> statement-breakpoint
CREATE INDEX `observation_by_object` ON `observation` (`object_kind`,`object_id`,`sequence`);--> statement-breakpoint
CREATE TABLE `revision` (
	`object_kind` text NOT NULL,
	`object_id` text NOT NULL,
	`version` integer NOT NULL,
	`record` text NOT NULL,
	`action` text NOT NULL,
	`at` text NOT NULL,
	PRIMARY KEY(`object_kind`, `object_id`, `version`),
	CONSTRAINT "revision_kind" CHECK("revision"."object_kind" in ('motor', 'stern')),
	CONSTRAINT "revision_action" CHECK("revision"."action" in ('create', 'edit', 'remove', 'restore')),
	CONSTRAINT "revision_record_is_json" CHECK(json_valid("revision"."record"))
);
--> statement-breakpoint
CREATE TABLE `stern` (
	`id` text PRIMARY KEY NOT NULL,
	`label` text NOT NULL,
	`version` integer NOT NULL,
	`demo` integer DEFAULT false NOT NULL,
	`created_at` text NOT NULL,
	`updated_at` text NOT NULL,
	`deleted_at` text,
	`record` text NOT NULL,
	`hull_form` text,
	CONSTRAINT "stern_record_is_json" CHECK(json_valid("stern"."record")),
	CONSTRAINT "stern_version_counts" CHECK("stern"."version" >= 1)
);
--> statement-breakpoint
CREATE INDEX `stern_by_label` ON `stern` ("label" collate nocase,`id`);