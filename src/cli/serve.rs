//! `matone serve`: runs the channels until it is told to end.

use std::path::PathBuf;

use clap::Args;
use tokio::signal::unix::{SignalKind, signal};
use tracing_subscriber::EnvFilter;

use crate::config::Config;
use crate::service;

use super::CliError;

/// What is logged unless `MATONE_LOG` says otherwise.
const LOGGED: &str = "warn,matone=info";

#[derive(Debug, Args)]
pub(super) struct ServeArguments {
    /// The configuration file.
    #[arg(long, value_name = "FILE")]
    config: PathBuf,
}

pub(super) fn run(arguments: &ServeArguments) -> Result<(), CliError> {
    let config = Config::read(&arguments.config)?;
    let filter = EnvFilter::try_from_env("MATONE_LOG").unwrap_or_else(|_| LOGGED.into());
    tracing_subscriber::fmt()
        .with_env_filter(filter)
        .with_ansi(false)
        .with_writer(std::io::stdout)
        .init();
    // What a panic says may hold a message's text.
    std::panic::set_hook(Box::new(|panic| {
        let place = panic.location().map(ToString::to_string);
        tracing::error!(place, "the program failed over something; it goes on");
    }));
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .enable_all()
        .build()?;
    let served = runtime.block_on(async {
        let mut terminate = signal(SignalKind::terminate())?;
        let ended = async move {
            tokio::select! {
                _ = terminate.recv() => {}
                _ = tokio::signal::ctrl_c() => {}
            }
        };
        Ok::<_, CliError>(service::run(config, ended).await?)
    });
    // What did not end in time is not waited for.
    runtime.shutdown_background();
    served
}
