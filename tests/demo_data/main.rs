//! What lies in `demo-data`: the invented family, the schema of the exchange
//! form, and the page that explains it. Each is held against core.

mod family;
mod page;
mod record;
mod schema;
