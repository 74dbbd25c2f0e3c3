//! Signed text is minisign's: Debian's `minisign` (0.11) checks ours, and we check its.

use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::signed::{sign, verify};

use super::run;

const TEXT: &str = "{\"drawwell\":\"plan\",\"version\":1}\n{\"fact\":\"note\"}\n";

#[test]
fn minisign_checks_what_we_sign() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let keys = OwnKeys::make().unwrap();
    let signed = sign(TEXT, "plan for family-1", &keys).unwrap();
    // As documented: the first four lines are the signature, the rest is the text.
    let lines: Vec<&str> = signed.split_inclusive('\n').collect();
    std::fs::write(path("plan.minisig"), lines[..4].concat()).unwrap();
    std::fs::write(path("plan"), lines[4..].concat()).unwrap();
    let check = || run("minisign", &["-V", "-m", &path("plan"), "-P", &keys.signing_key().unwrap()]);
    let done = check();
    let said = String::from_utf8_lossy(&done.stdout).into_owned();
    assert!(done.status.success() && said.contains("plan for family-1"), "{said}");
    std::fs::write(path("plan"), TEXT.replace("note", "Note")).unwrap();
    assert!(!check().status.success(), "a changed text");
}

#[test]
fn we_check_what_minisign_signs() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    // -W: without a passphrase.
    let done = run("minisign", &["-G", "-W", "-p", &path("public"), "-s", &path("secret")]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    std::fs::write(path("plan"), TEXT).unwrap();
    let done = run("minisign", &["-S", "-s", &path("secret"), "-m", &path("plan"), "-t", "for family-1"]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let signed = std::fs::read_to_string(path("plan.minisig")).unwrap() + TEXT;
    let public = std::fs::read_to_string(path("public")).unwrap().lines().nth(1).unwrap().to_owned();
    let stranger = OwnKeys::make().unwrap().signing_key().unwrap();
    let known = [stranger.clone(), public.clone()];
    assert_eq!(verify(&signed, &known).unwrap(), (TEXT, public.as_str()));
    assert_eq!(verify(&signed, &[stranger]).unwrap_err().key, "signed-by-a-stranger");
    for (was, is) in [("plan", "Plan"), ("for family-1", "for family-2")] {
        let changed = signed.replacen(was, is, 1);
        assert_eq!(verify(&changed, std::slice::from_ref(&public)).unwrap_err().key, "signed-not-as-it-was", "{was}");
    }
}
