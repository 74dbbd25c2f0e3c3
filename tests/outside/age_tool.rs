//! Sealed files are age files: Debian's `age` (1.1.1) opens ours, and we open its.

use std::io::Read;

use drawwell_core::share::sealed::own_keys::OwnKeys;
use drawwell_core::share::sealed::{how, open, seal, OpenWith, SealFor, Sealed};
use flate2::read::GzDecoder;
use flate2::write::GzEncoder;

use super::run;

const CONTENTS: &[u8] = b"{\"drawwell\":\"family\"}\nand a line with \xc3\xbc and \xf0\x9f\x8c\x99\n";

fn opens(keys: &OwnKeys) -> OpenWith {
    OpenWith::Keys(vec![keys.opens().to_owned()])
}

#[test]
fn age_opens_what_we_seal_and_gunzip_reads_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let keys = OwnKeys::make().unwrap();
    std::fs::write(path("key"), keys.opens()).unwrap();
    let sealed = seal(CONTENTS, &SealFor::Keys(vec![keys.sealing_key().unwrap()])).unwrap();
    std::fs::write(path("sealed"), sealed).unwrap();
    let done = run("age", &["-d", "-i", &path("key"), "-o", &path("plain"), &path("sealed")]);
    assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
    let mut plain = Vec::new();
    GzDecoder::new(std::fs::File::open(path("plain")).unwrap()).read_to_end(&mut plain).unwrap();
    assert_eq!(plain, CONTENTS);
}

#[test]
fn we_open_what_age_seals_armored_or_not() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).to_str().unwrap().to_owned();
    let keys = OwnKeys::make().unwrap();
    let mut packed = GzEncoder::new(std::fs::File::create(path("packed")).unwrap(), flate2::Compression::fast());
    std::io::Write::write_all(&mut packed, CONTENTS).unwrap();
    packed.finish().unwrap();
    for more in [&["-a"][..], &[]] {
        let key = keys.sealing_key().unwrap();
        let (to, from) = (path("sealed"), path("packed"));
        let arguments = [more, &["-r", &key, "-o", &to, &from]].concat();
        let done = run("age", &arguments);
        assert!(done.status.success(), "{}", String::from_utf8_lossy(&done.stderr));
        let sealed = std::fs::read(path("sealed")).unwrap();
        assert_eq!(how(&sealed).unwrap(), Sealed::ForKeys);
        assert_eq!(open(&sealed, &opens(&keys)).unwrap(), CONTENTS);
    }
}

#[test]
fn age_and_we_take_each_others_keys_for_keys() {
    let folder = tempfile::tempdir().unwrap();
    let key = folder.path().join("key").to_str().unwrap().to_owned();
    let done = run("age-keygen", &["-o", &key]);
    assert!(done.status.success());
    let theirs = std::fs::read_to_string(&key).unwrap();
    let opens = theirs.lines().find(|line| line.starts_with("AGE-SECRET-KEY-")).unwrap().to_owned();
    let public = theirs.lines().find_map(|line| line.strip_prefix("# public key: ")).unwrap().to_owned();
    let sealed = seal(CONTENTS, &SealFor::Keys(vec![public])).unwrap();
    assert_eq!(open(&sealed, &OpenWith::Keys(vec![opens])).unwrap(), CONTENTS);
}
