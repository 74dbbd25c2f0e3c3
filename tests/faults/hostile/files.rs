//! Files on the disk: the person's alone, under names nobody can foresee, gone where it was said.

use drawwell_core::journal::Journal;
use drawwell_core::private_file;
use drawwell_core::screen::shapes::{DeskEvent, Event};
use drawwell_core::time::Span;
use drawwell_core::trouble::{Kind, Trouble};
use drawwell_tests::visiting::Desk;

use super::{acquainted, note, person, NOW};

fn names(folder: &std::path::Path) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|file| file.unwrap().file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

#[cfg(unix)]
mod on_unix {
    use std::os::unix::fs::PermissionsExt;
    use std::path::Path;

    use super::*;

    fn mode(path: &Path) -> u32 {
        std::fs::metadata(path).unwrap().permissions().mode() & 0o777
    }

    #[test]
    fn every_file_of_a_record_and_a_desk_is_the_persons_alone() {
        let mut person = person();
        note(&mut person, "Left is back.");
        let clock = person.clock().clone();
        person.app().unwrap().maintain(&clock).unwrap();
        let folder = person.path().parent().unwrap().to_owned();
        assert!(names(&folder).len() >= 3, "{:?}", names(&folder));
        for name in names(&folder) {
            assert_eq!(mode(&folder.join(&name)), 0o600, "{name}");
        }
        let (_, desk) = acquainted();
        assert_eq!((mode(desk.folder()), mode(&desk.folder().join("families"))), (0o700, 0o700));
        for name in names(&desk.folder().join("families")) {
            assert_eq!(mode(&desk.folder().join("families").join(&name)), 0o600, "{name}");
        }
    }

    #[test]
    fn a_file_that_is_handed_over_is_so_from_its_first_byte() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("drawwell-x.jsonl");
        private_file::whole_or_not(&path, |_| {
            let half: Vec<String> = names(folder.path());
            assert_eq!(half.len(), 1);
            assert!(half[0].len() > "drawwell-x.jsonl.half-.part".len() + 31, "{half:?}");
            assert_eq!(mode(&folder.path().join(&half[0])), 0o600);
            Ok(())
        })
        .unwrap();
        assert_eq!((names(folder.path()), mode(&path)), (vec!["drawwell-x.jsonl".to_owned()], 0o600));
    }

    #[test]
    fn a_link_is_replaced_and_what_it_leads_to_is_not_touched() {
        let folder = tempfile::tempdir().unwrap();
        let (other, link) = (folder.path().join("letter"), folder.path().join("drawwell-x.jsonl"));
        std::fs::write(&other, b"a letter").unwrap();
        std::os::unix::fs::symlink(&other, &link).unwrap();
        private_file::whole_or_not(&link, |file| {
            std::io::Write::write_all(file, b"a record").map_err(|_| Trouble::new(Kind::Full, "trouble-full"))
        })
        .unwrap();
        assert_eq!(std::fs::read(&other).unwrap(), b"a letter");
        assert!(!std::fs::symlink_metadata(&link).unwrap().is_symlink());
    }

    #[test]
    fn a_pipe_is_refused_and_waited_for_by_nobody() {
        let folder = tempfile::tempdir().unwrap();
        let pipe = folder.path().join("pipe.drawwell");
        assert!(std::process::Command::new("mkfifo").arg(&pipe).status().unwrap().success());
        assert_eq!(private_file::open(&pipe).unwrap_err().key, "trouble-no-file");
        assert_eq!(Journal::open(&pipe, "one", NOW).unwrap_err().key, "trouble-not-a-record");
        let written = private_file::whole_or_not(&pipe, |_| Ok(()));
        assert_eq!(written.unwrap_err().key, "trouble-no-file");
    }
}

#[test]
fn a_folder_is_refused_as_a_file() {
    let folder = tempfile::tempdir().unwrap();
    assert_eq!(private_file::open(folder.path()).unwrap_err().key, "trouble-no-file");
    assert_eq!(Journal::open(folder.path(), "one", NOW).unwrap_err().key, "trouble-not-a-record");
}

#[test]
fn nothing_is_written_onto_a_record() {
    let mut person = person();
    note(&mut person, "Left is back.");
    let bytes = std::fs::read(person.path()).unwrap();
    let refused = private_file::whole_or_not(person.path(), |_| Ok(())).unwrap_err();
    assert_eq!(refused.key, "trouble-onto-a-record");
    assert_eq!(std::fs::read(person.path()).unwrap(), bytes);
}

/// Seen: a foreign file that was named by mistake was renamed as damaged.
#[test]
fn a_foreign_file_stays_where_it_is_and_as_it_is() {
    let folder = tempfile::tempdir().unwrap();
    for (name, bytes) in
        [("holiday.jpg", &b"\xff\xd8\xff\xe0 a picture"[..]), ("letter.txt", b"Dear Ada"), ("x", &[7; 9000])]
    {
        let path = folder.path().join(name);
        std::fs::write(&path, bytes).unwrap();
        assert_eq!(Journal::open(&path, "one", NOW).unwrap_err().key, "trouble-not-a-record", "{name}");
        assert_eq!(std::fs::read(&path).unwrap(), bytes);
    }
    assert_eq!(names(folder.path()), ["holiday.jpg", "letter.txt", "x"]);
}

#[test]
fn what_a_crash_left_half_made_is_swept_at_the_next_start_and_nothing_else_is() {
    let mut person = person();
    note(&mut person, "Left is back.");
    let folder = person.path().parent().unwrap().to_owned();
    let half = format!("record.drawwell.half-{}.part", "0af3".repeat(8));
    for name in [half.as_str(), "thesis.half-0af3.part", "record.drawwell.half-x"] {
        std::fs::write(folder.join(name), b"half").unwrap();
    }
    person.killed_and_opened().unwrap();
    let left = names(&folder);
    assert!(!left.contains(&half) && left.contains(&"thesis.half-0af3.part".to_owned()), "{left:?}");
}

/// What *Erase* promises: the folder is listed after.
#[test]
fn after_erasing_nothing_of_the_record_is_in_the_folder() {
    let mut person = person();
    note(&mut person, "Nobody shall read this.");
    let folder = person.path().parent().unwrap().to_owned();
    for hours in [1, 8, 16] {
        person.wait(Span::hours(hours)).unwrap();
        let clock = person.clock().clone();
        person.app().unwrap().maintain(&clock).unwrap();
    }
    for beside in [".damaged-1", ".damaged-1-wal", "-journal"] {
        std::fs::write(format!("{}{beside}", person.path().display()), b"Nobody shall read this.").unwrap();
    }
    person.send(Event::EraseRecord).unwrap();
    for name in names(&folder) {
        let bytes = std::fs::read(folder.join(&name)).unwrap();
        assert!(!bytes.windows(6).any(|part| part == b"Nobody"), "{name}");
        assert!(["record.drawwell", "record.drawwell-wal", "record.drawwell-shm"].contains(&name.as_str()), "{name}");
    }
    // Numbers that others may know are not given out again.
    note(&mut person, "New.");
    assert!(person.record().unwrap().contains("thumb.") && !person.record().unwrap().contains("Nobody"));
}

/// What *Remove* promises.
#[test]
fn after_removing_a_family_nothing_of_it_is_in_the_desk_s_folder() {
    let (_, mut desk) = acquainted();
    let families = desk.folder().join("families");
    let record = families.join(names(&families).into_iter().find(|name| name.ends_with(".drawwell")).unwrap());
    for beside in [".damaged-1", ".backup-1", "-journal"] {
        std::fs::write(format!("{}{beside}", record.display()), b"x").unwrap();
    }
    let family = desk.families().unwrap()[0].2.clone();
    desk.send(Event::OnDesk { event: DeskEvent::RemoveFamily { family } }).unwrap();
    assert_eq!(names(&families), [""; 0]);
    desk.opened_again().unwrap();
    let desk: &Desk = &desk;
    assert!(names(desk.folder()).iter().all(|name| !name.contains("family-")));
}
