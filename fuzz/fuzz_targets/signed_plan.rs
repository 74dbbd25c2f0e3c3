#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| drawwell_tests::fuzzed::signed_plan(bytes));
