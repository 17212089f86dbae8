ALTER TABLE `observation` ADD `again` integer DEFAULT false NOT NULL;--> statement-breakpoint
ALTER TABLE `observation` ADD `comment` text;