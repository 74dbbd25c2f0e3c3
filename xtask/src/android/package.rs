//! Resources, classes and native libraries in one file: packed, aligned, and
//! signed with a key made on this machine, which is good for trying alone.

use std::{fs, path::Path};

use super::{
    archive::{self, Entry},
    native, room,
};
use crate::{place::Places, process, stop::Stop};

/// Not a secret: the key signs nothing that is given away.
const PASSWORD: &str = "for-trying";

/// Makes it. Without our own library nothing native goes in.
pub(crate) fn make(places: &Places, classes: &[Entry], libraries: &[Entry], to: &Path) -> Result<(), Stop> {
    let folder = room::packages(places);
    let (packed, aligned) = (folder.join("packed.apk"), folder.join("aligned.apk"));
    let mut added = classes.to_vec();
    if !libraries.is_empty() {
        added.extend(libraries.iter().cloned().chain(native::of_others(places)?));
    }
    archive::extend(&room::linked(places).join("resources.apk"), &packed, &added)?;
    process::run(process::command(places, "zipalign").args(["-f", "-p", "4"]).arg(&packed).arg(&aligned))?;

    let key = folder.join("key-for-trying.p12");
    if !key.is_file() {
        make_key(places, &key)?;
    }
    let mut sign = process::command(places, "apksigner");
    sign.args(["sign", "--min-sdk-version", "26", "--ks"]).arg(&key).arg("--ks-pass").arg(format!("pass:{PASSWORD}"));
    process::run(sign.arg("--out").arg(to).arg(&aligned))?;
    for step in [packed, aligned] {
        fs::remove_file(&step).map_err(|error| Stop::at(&step, &error))?;
    }
    Ok(())
}

fn make_key(places: &Places, to: &Path) -> Result<(), Stop> {
    let mut make = process::command(places, crate::java::beside("keytool"));
    make.args(["-genkeypair", "-storetype", "PKCS12", "-alias", "trying", "-keyalg", "RSA", "-keysize", "3072"]);
    make.args(["-validity", "3650", "-dname", "CN=Drawwell for trying", "-storepass", PASSWORD]);
    process::run(make.arg("-keystore").arg(to))
}
