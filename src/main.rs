//! Arguments → a window, or a command answered on the console.

fn main() -> std::process::ExitCode {
    benchwright::console::run(benchwright::window::run)
}
