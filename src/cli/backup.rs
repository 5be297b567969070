//! `matone backup`: copies the store while the service works in it.

use std::path::PathBuf;

use clap::Args;

use crate::config::Config;
use crate::store::Store;

use super::CliError;

#[derive(Debug, Args)]
pub(super) struct BackupArguments {
    /// The configuration file, which names the store.
    #[arg(long, value_name = "FILE")]
    config: PathBuf,
    /// Where the copy goes; one that is there already is replaced when the new one is whole.
    to: PathBuf,
}

pub(super) fn run(arguments: &BackupArguments) -> Result<(), CliError> {
    let config = Config::read(&arguments.config)?;
    Ok(Store::copy(&config.store.path, &arguments.to)?)
}
