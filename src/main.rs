//! Arguments → a window, or a command answered on the console.

#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> std::process::ExitCode {
    benchwright::console::run(benchwright::window::run)
}
