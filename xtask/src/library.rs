//! What the platform calls the library that carries the surface.

/// The file's name on an operating system, as Rust names those.
pub(crate) fn file_name(system: &str) -> &'static str {
    match system {
        "windows" => "drawwell.dll",
        "macos" | "ios" => "libdrawwell.dylib",
        _ => "libdrawwell.so",
    }
}

#[cfg(test)]
mod tests {
    use super::file_name;

    #[test]
    fn each_platform_has_its_own_name() {
        assert_eq!(file_name("linux"), "libdrawwell.so");
        assert_eq!(file_name("android"), "libdrawwell.so");
        assert_eq!(file_name("macos"), "libdrawwell.dylib");
        assert_eq!(file_name("windows"), "drawwell.dll");
    }

    #[test]
    fn it_is_the_name_that_the_compiler_gives_here() {
        use std::env::consts::{DLL_PREFIX, DLL_SUFFIX, OS};
        assert_eq!(file_name(OS), format!("{DLL_PREFIX}drawwell{DLL_SUFFIX}"));
    }
}
