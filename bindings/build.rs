//! Hands the shapes declared in core to UniFFI.
//!
//! UniFFI wants to see the fields of a type that lives in another crate. They
//! are read from core's one declaration, so the two can't drift apart.

use std::{env, fs, path::PathBuf};

use quote::quote;
use syn::{parse_quote, Attribute, Field, Item};

fn only_docs(attributes: &[Attribute]) -> Vec<Attribute> {
    attributes.iter().filter(|a| a.path().is_ident("doc")).cloned().collect()
}

/// What serde may find left out, a host may leave out too.
fn keep_docs<'a>(fields: impl Iterator<Item = &'a mut Field>) {
    for field in fields {
        let may_be_left = field.attrs.iter().any(|a| a.path().is_ident("serde"));
        field.attrs = only_docs(&field.attrs);
        if may_be_left {
            field.attrs.push(parse_quote!(#[uniffi(default = None)]));
        }
    }
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let folder = PathBuf::from(env::var("CARGO_MANIFEST_DIR")?).join("../core/src/screen/shapes");
    println!("cargo:rerun-if-changed={}", folder.display());
    let mut files = fs::read_dir(&folder)?.map(|entry| Ok(entry?.path())).collect::<std::io::Result<Vec<_>>>()?;
    files.sort();
    let mut items = Vec::new();
    for file in files {
        items.extend(syn::parse_file(&fs::read_to_string(&file)?)?.items);
    }
    let mut out = String::new();
    for item in items {
        let tokens = match item {
            Item::Struct(mut it) => {
                it.attrs = only_docs(&it.attrs);
                keep_docs(it.fields.iter_mut());
                quote!(#[uniffi::remote(Record)] #it)
            }
            Item::Enum(mut it) => {
                it.attrs = only_docs(&it.attrs);
                for variant in &mut it.variants {
                    variant.attrs = only_docs(&variant.attrs);
                    keep_docs(variant.fields.iter_mut());
                }
                quote!(#[uniffi::remote(Enum)] #it)
            }
            _ => continue,
        };
        out.push_str(&tokens.to_string());
        out.push('\n');
    }
    fs::write(PathBuf::from(env::var("OUT_DIR")?).join("shapes.rs"), out)?;
    Ok(())
}
