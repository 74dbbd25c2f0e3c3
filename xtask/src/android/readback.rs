//! What a package is, in the words of the system's own tools.

use std::{collections::BTreeSet, path::Path, process::Command};

use super::archive;
use crate::{process, stop::Stop};

/// All that the package may ask for.
const PERMISSIONS: [&str; 4] = ["POST_NOTIFICATIONS", "SCHEDULE_EXACT_ALARM", "RECEIVE_BOOT_COMPLETED", "VIBRATE"];

/// Classes that are found by name when the app starts, one for each room they come from.
const CLASSES: [&str; 5] = [
    "Ldrawwell/android/MainActivity;",
    "Ldrawwell/ui/ShellKt;",
    "Ldrawwell/surface/Drawwell;",
    "Lcom/sun/jna/Native;",
    "Landroidx/compose/ui/platform/AndroidComposeView;",
];

/// Stops where the package is not what was meant.
pub(crate) fn check(package: &Path, with_core: bool) -> Result<(), Stop> {
    process::run(Command::new("apksigner").args(["verify", "--min-sdk-version", "26"]).arg(package))?;
    process::run(Command::new("zipalign").args(["-c", "-p", "4"]).arg(package))?;
    let said = Command::new(super::resources::PROGRAM).args(["dump", "badging"]).arg(package).output();
    let said = said.map_err(|error| Stop::new(format!("aapt2 dump badging: {error}")))?;
    let wrong = wrong(&String::from_utf8_lossy(&said.stdout), &archive::entries(package)?, with_core);
    if wrong.is_empty() {
        Ok(())
    } else {
        Err(Stop::new(format!("{}: {}", package.display(), wrong.join("; "))))
    }
}

/// Everything about it that is not as it was meant.
fn wrong(badging: &str, entries: &[archive::Entry], with_core: bool) -> Vec<String> {
    let mut wrong = Vec::new();
    for line in [
        "package: name='drawwell.android'",
        "sdkVersion:'26'",
        "targetSdkVersion:'34'",
        "application-label:'Drawwell'",
        "launchable-activity: name='drawwell.android.MainActivity'",
    ] {
        if !badging.lines().any(|it| it.starts_with(line)) {
            wrong.push(format!("it does not say {line}"));
        }
    }
    let asked: BTreeSet<&str> = badging.lines().filter_map(|it| it.strip_prefix("uses-permission: name='")).collect();
    let meant: BTreeSet<String> = PERMISSIONS.iter().map(|it| format!("android.permission.{it}'")).collect();
    if !asked.iter().copied().eq(meant.iter().map(String::as_str)) {
        wrong.push(format!("it asks for {asked:?}"));
    }
    for class in CLASSES {
        let held = |(name, bytes): &archive::Entry| {
            name.ends_with(".dex") && bytes.windows(class.len()).any(|it| it == class.as_bytes())
        };
        if !entries.iter().any(held) {
            wrong.push(format!("it lacks {class}"));
        }
    }
    let cores = entries.iter().filter(|(name, _)| name.ends_with("/libdrawwell.so")).count();
    let native = entries.iter().filter(|(name, _)| name.ends_with(".so")).count();
    match with_core {
        true if cores != 2 => wrong.push(format!("it holds the core {cores} times")),
        false if native != 0 => wrong.push(format!("it holds {native} native libraries")),
        _ => {}
    }
    wrong
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said() -> String {
        let mut text = "package: name='drawwell.android' versionCode='100'\nsdkVersion:'26'\ntargetSdkVersion:'34'\n\
             application-label:'Drawwell'\nlaunchable-activity: name='drawwell.android.MainActivity'  label=''\n"
            .to_owned();
        for permission in PERMISSIONS {
            text.push_str(&format!("uses-permission: name='android.permission.{permission}'\n"));
        }
        text
    }

    fn dex() -> archive::Entry {
        ("classes.dex".into(), CLASSES.concat().into_bytes())
    }

    #[test]
    fn what_was_meant_is_not_wrong() {
        assert_eq!(wrong(&said(), &[dex()], false), Vec::<String>::new());
        let core = |kind: &str| (format!("lib/{kind}/libdrawwell.so"), vec![]);
        assert_eq!(wrong(&said(), &[dex(), core("x86_64"), core("arm64-v8a")], true), Vec::<String>::new());
    }

    #[test]
    fn the_internet_a_lost_class_and_a_lost_core_are() {
        let internet = said() + "uses-permission: name='android.permission.INTERNET'\n";
        assert_eq!(wrong(&internet, &[dex()], false).len(), 1);
        assert_eq!(wrong(&said(), &[], false).len(), CLASSES.len());
        assert_eq!(wrong(&said(), &[dex()], true), ["it holds the core 0 times"]);
        assert_eq!(wrong(&said(), &[dex(), ("lib/x/a.so".into(), vec![])], false).len(), 1);
    }
}
