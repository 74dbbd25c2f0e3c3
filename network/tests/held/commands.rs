//! The program by hand: what it is asked wrongly it refuses, and nothing is left half made.

use std::path::Path;
use std::process::{Command, Output};

use drawwell_network::invented;

use crate::shared::Network;

fn program(words: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_drawwell-network")).args(words).output().unwrap()
}

fn refused(words: &[&str]) -> String {
    let output = program(words);
    assert!(!output.status.success(), "{words:?}");
    String::from_utf8(output.stderr).unwrap()
}

fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

#[test]
fn what_can_not_be_done_says_why() {
    let folder = tempfile::tempdir().unwrap();
    let store = Network::shared().folder.path().join("store");
    let (store, out) = (text(&store).to_owned(), folder.path().join("out.csv"));
    let out = text(&out);
    for (words, says) in [
        (vec!["report", "production", &store, "--sql", "SELECT * FROM families"], "not run"),
        (vec!["report", "everything", &store, "--out", out], "there are production"),
        (vec!["report", "production", &store, "--out", "report.docx"], ".csv"),
        (vec!["report", "production", &store, "--out", out, "--rule", "none"], "cms, nhs"),
        (vec!["report", "production", text(folder.path()), "--out", out], "no store"),
        (vec!["report", "production", &store], "--out"),
        (vec!["take-in", &store, "--site", "one", out], "--key"),
        (vec!["take-in", &store, "--key", out, "--site", "one", out], "out.csv"),
        (vec!["conquer"], "no command conquer"),
    ] {
        let told = refused(&words);
        assert!(told.contains(says), "{words:?}: {told}");
    }
    assert!(!Path::new(out).exists(), "nothing was written");
}

#[test]
fn a_network_from_nothing_to_a_report() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| text(&folder.path().join(name)).to_owned();
    let now = invented::present().unix_milliseconds().to_string();
    let done = |words: &[&str]| {
        let output = program(words);
        assert!(output.status.success(), "{words:?}: {}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).unwrap()
    };
    done(&["invent", &at("desks"), "6", "2"]);
    done(&["key", &at("key")]);
    let taken =
        done(&["take-in", &at("store"), "--key", &at("key"), "--site", "one", "--at", &now, &at("desks/site-a")]);
    assert!(taken.contains("counted"), "{taken}");
    assert!(refused(&["take-in", &at("store"), "--key", &at("key"), "--site", "a site", &at("desks/site-a")])
        .contains("site"));
    assert!(done(&["verify", &at("store")]).contains("sessions"));
    done(&["report", "not_known", &at("store"), "--out", &at("report.csv"), "--at", &now]);
    let csv = std::fs::read_to_string(at("report.csv")).unwrap();
    assert!(csv.starts_with("site,what,families,p10,p50,p90,suppressed"), "{csv}");
    assert!(csv.lines().skip(1).all(|line| line.ends_with(",,,,small")), "of six nothing is told: {csv}");
    assert!(done(&["report", "not_known", &at("store"), "--explain"]).contains("files, "));
    assert_eq!(done(&["report", "--list"]).lines().count(), 20);
}
