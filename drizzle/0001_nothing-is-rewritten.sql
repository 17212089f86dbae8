-- What was taken and what was done stays as it was written; a removed record keeps its row; versions count by one.
CREATE TRIGGER observation_stays BEFORE UPDATE ON observation
BEGIN SELECT RAISE(ABORT, 'an observation is never changed'); END;
--> statement-breakpoint
CREATE TRIGGER observation_is_kept BEFORE DELETE ON observation
BEGIN SELECT RAISE(ABORT, 'an observation is never deleted'); END;
--> statement-breakpoint
CREATE TRIGGER revision_stays BEFORE UPDATE ON revision
BEGIN SELECT RAISE(ABORT, 'a revision is never changed'); END;
--> statement-breakpoint
CREATE TRIGGER revision_is_kept BEFORE DELETE ON revision
BEGIN SELECT RAISE(ABORT, 'a revision is never deleted'); END;
--> statement-breakpoint
CREATE TRIGGER motor_is_kept BEFORE DELETE ON motor
BEGIN SELECT RAISE(ABORT, 'a removed motor keeps its row'); END;
--> statement-breakpoint
CREATE TRIGGER stern_is_kept BEFORE DELETE ON stern
BEGIN SELECT RAISE(ABORT, 'a removed stern keeps its row'); END;
--> statement-breakpoint
CREATE TRIGGER motor_counts BEFORE UPDATE ON motor
WHEN new.version <> old.version + 1 OR new.id <> old.id
BEGIN SELECT RAISE(ABORT, 'a change of a motor makes the next version'); END;
--> statement-breakpoint
CREATE TRIGGER stern_counts BEFORE UPDATE ON stern
WHEN new.version <> old.version + 1 OR new.id <> old.id
BEGIN SELECT RAISE(ABORT, 'a change of a stern makes the next version'); END;
--> statement-breakpoint
CREATE TRIGGER motor_has_revision BEFORE UPDATE ON motor
WHEN NOT EXISTS (SELECT 1 FROM revision WHERE object_kind = 'motor' AND object_id = new.id AND version = new.version)
BEGIN SELECT RAISE(ABORT, 'a change of a motor is written down'); END;
--> statement-breakpoint
CREATE TRIGGER stern_has_revision BEFORE UPDATE ON stern
WHEN NOT EXISTS (SELECT 1 FROM revision WHERE object_kind = 'stern' AND object_id = new.id AND version = new.version)
BEGIN SELECT RAISE(ABORT, 'a change of a stern is written down'); END;
--> statement-breakpoint
CREATE TRIGGER observation_is_not_replaced BEFORE INSERT ON observation
WHEN EXISTS (SELECT 1 FROM observation WHERE sequence = new.sequence OR id = new.id)
BEGIN SELECT RAISE(ABORT, 'an observation is never replaced'); END;
--> statement-breakpoint
CREATE TRIGGER revision_is_not_replaced BEFORE INSERT ON revision
WHEN EXISTS (SELECT 1 FROM revision WHERE object_kind = new.object_kind AND object_id = new.object_id AND version = new.version)
BEGIN SELECT RAISE(ABORT, 'a revision is never replaced'); END;
--> statement-breakpoint
CREATE TRIGGER motor_is_not_replaced BEFORE INSERT ON motor
WHEN EXISTS (SELECT 1 FROM motor WHERE id = new.id)
BEGIN SELECT RAISE(ABORT, 'an id is used once'); END;
--> statement-breakpoint
CREATE TRIGGER stern_is_not_replaced BEFORE INSERT ON stern
WHEN EXISTS (SELECT 1 FROM stern WHERE id = new.id)
BEGIN SELECT RAISE(ABORT, 'an id is used once'); END;
