//! Arguments in, exit code out.

fn main() -> std::process::ExitCode {
    matone::cli::run()
}
