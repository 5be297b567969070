//! The languages are embedded as they are: a new file among them is a reason to build again.

fn main() {
    println!("cargo::rerun-if-changed=locales");
}
