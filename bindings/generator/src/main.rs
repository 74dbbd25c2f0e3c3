//! Writes the Kotlin and Python faces of the surface. A crate of its own,
//! because the generator takes minutes to build and the surface does not need it.

fn main() {
    uniffi::uniffi_bindgen_main();
}
