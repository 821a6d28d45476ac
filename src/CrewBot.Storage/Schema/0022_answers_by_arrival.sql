-- First answers are forgotten once a day: keeping them by age cost every change a page more on its way to the disk.

DROP INDEX handled_request_age;

PRAGMA user_version = 22;
