//! How fast the numbers come, each beside a yardstick of the same run.
//!
//! Nothing here fails: machines differ and are busy. It prints ratios, and the processor they were seen on.

use std::path::Path;
use std::process::Command;
use std::time::Instant;

use super::run::{Done, cargo, on_path, output_of, run, top, write};
use super::tools::{programs, python};

/// Rows of the kernel, in every language.
const ROWS: u32 = 200_000;
/// Rows for what takes long over each.
const FEW: u32 = 20_000;
/// Lines of the list.
const LINES: usize = 100_000;
/// Times that it is assessed on one core and, in turn, on all: the same run differs by an eighth.
const PAIRS: usize = 5;
/// The kinds of lines in it.
pub const LIST: [&str; 4] = [
    "M16 x 60 hex bolt, 8.8, 400 pcs, C3, 15 years",
    "500 ea 3/4-10 x 4 HHCS gr 8 HDG, C3",
    "A325 7/8 x 3-1/2 w/ DH nut & F436, C4",
    "M12 hex nuts class 8, 20000 pcs, C3, 10 years",
];

/// An order line, each calculator, the kernel beside other languages, a list on one core and on all, and what growth costs.
pub fn bench() -> Done {
    println!("On {}\n\nAn order line", processor());
    run(cargo().args(["bench", "--quiet", "--bench", "order"]))?;
    println!("\nThe first example of each calculator, read, solved and told");
    run(cargo().args(["bench", "--quiet", "--bench", "calculator"]))?;
    println!("\nOne row of the kernel of tests/speed/kernel.rs");
    kernels()?;
    println!("\nA list of {LINES} lines in the terminal");
    list()?;
    println!("\nWhat growth costs");
    run(cargo().args(["bench", "--quiet", "--bench", "growth"]))
}

/// Time for a row and the sum of all rows.
struct Run {
    nanoseconds: f64,
    sum: f64,
}

impl Run {
    fn of(command: &mut Command) -> Done<Self> {
        let printed = output_of(command)?;
        let numbers: Vec<f64> = printed.split_whitespace().filter_map(|word| word.parse().ok()).collect();
        let [nanoseconds, sum] = numbers[..] else {
            return Err(format!("two numbers, not {printed}").into());
        };
        Ok(Self { nanoseconds, sum })
    }
}

fn kernels() -> Done {
    let folder = top().join("tests/speed");
    let kernel = |rows: u32| {
        Run::of(cargo().args(["bench", "--quiet", "--bench", "kernel", "--"]).arg(rows.to_string()))
    };
    let ours = kernel(ROWS)?;
    let tell = |name: &str, nanoseconds: f64| {
        println!("  {name:<28} {nanoseconds:>12.1} ns {:>10.1} times", nanoseconds / ours.nanoseconds);
    };
    tell("this crate, typed quantities", ours.nanoseconds);
    programs(&["node"], &["nodejs"])?;
    let js = Run::of(Command::new("node").arg(folder.join("kernel.js")).arg(ROWS.to_string()))?;
    same("JavaScript", ours.sum, js.sum)?;
    tell("JavaScript, plain numbers", js.nanoseconds);
    let python = python("recompute", &top().join("tests/recompute/requirements.txt"))?;
    let script = folder.join("kernel.py");
    let all = Run::of(Command::new(python).arg("-B").arg(script).arg(ROWS.to_string()))?;
    same("Python", ours.sum, all.sum)?;
    tell("Python with pint", all.nanoseconds);
    match on_path("soffice") {
        Some(calc) => {
            // What starting and storing cost is taken off by a sheet of the same rows without formulas.
            let (full, sum) = sheet(&calc, true)?;
            let (bare, _) = sheet(&calc, false)?;
            same("the spreadsheet", kernel(FEW)?.sum, sum)?;
            tell("LibreOffice Calc", (full - bare) * 1e9 / f64::from(FEW));
        }
        None => println!("  LibreOffice Calc is not installed: left out"),
    }
    Ok(())
}

fn same(who: &str, ours: f64, theirs: f64) -> Done {
    if (ours - theirs).abs() <= 1e-9 * ours.abs() {
        Ok(())
    } else {
        Err(format!("{who} computes {theirs} and this crate {ours}").into())
    }
}

/// Lets Calc read a sheet of formulas, or of numbers, and store what it computed: seconds, and the sum.
fn sheet(calc: &Path, formulas: bool) -> Done<(f64, f64)> {
    let folder = top().join("target/kernel");
    let (source, out) = (folder.join("kernel.csv"), folder.join("out"));
    let mut text = String::new();
    for at in 0..FEW {
        let row = at + 1;
        let (bolt, coat, rate) = (
            14.0 + f64::from(at % 997) / 1000.0,
            40.0 + f64::from(at % 61),
            0.7 + f64::from(at % 350) / 100.0,
        );
        text += &format!("{bolt},{coat},{rate}");
        text += &if formulas {
            format!(
                ",=(A{row}+0.4-(A{row}+4*B{row}/1000))*1000,=7.2*B{row},\"=IF(B{row}/C{row}<=20^0.873,(B{row}/C{row})^(1/0.873),20+(B{row}/C{row}-20^0.873)/(0.873*20^(0.873-1)))\",=D{row}+E{row}+F{row}\n"
            )
        } else {
            ",1,1,1,1\n".to_owned()
        };
    }
    write(&source, text)?;
    let start = Instant::now();
    run(Command::new(calc)
        .args(["--headless", "--convert-to", "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false"])
        .arg("--outdir")
        .args([&out, &source])
        .stdout(std::process::Stdio::null()))?;
    let seconds = start.elapsed().as_secs_f64();
    let results = super::run::read_text(&out.join("kernel.csv"))?;
    let last =
        |line: &str| line.rsplit(',').next().and_then(|cell| cell.parse::<f64>().ok()).unwrap_or(f64::NAN);
    Ok((seconds, results.lines().map(last).sum()))
}

/// The terminal's list on one core and on all.
fn list() -> Done {
    let text: Vec<&str> = LIST.into_iter().cycle().take(LINES).collect();
    let text = text.join("\n");
    let cores = std::thread::available_parallelism()?.get();
    let mut runs = Vec::new();
    for _ in 0..PAIRS {
        runs.push((in_terminal(&text, 1)?, in_terminal(&text, cores)?));
    }
    let one = median(runs.iter().map(|&(one, _)| one));
    let all = median(runs.iter().map(|&(_, all)| all));
    let lost = 100.0 * (1.0 - one / (all * cores as f64));
    println!(
        "  one core {one:.2} s, {cores} cores {all:.2} s, the middle of {PAIRS} each: {lost:.0} % lost (at most 15 on two)"
    );
    Ok(())
}

/// The middle one of an odd number of times.
fn median(times: impl Iterator<Item = f64>) -> f64 {
    let mut times: Vec<f64> = times.collect();
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}

/// Seconds that the terminal takes for a list on so many cores, built as fast as it can be.
pub fn in_terminal(list: &str, cores: usize) -> Done<f64> {
    run(cargo().args(["build", "--quiet", "--profile", "bench", "--bin", "kettle-barrel"]))?;
    let program = top().join("target/release").join(format!("kettle-barrel{}", std::env::consts::EXE_SUFFIX));
    let file = top().join("target/kernel/lines.txt");
    write(&file, list)?;
    let start = Instant::now();
    let mut list = Command::new(&program);
    list.arg("list").arg(&file).env("RAYON_NUM_THREADS", cores.to_string());
    // It ends with 1 where a line has a problem, which is no fault of the run.
    list.stdout(std::process::Stdio::null()).status()?;
    Ok(start.elapsed().as_secs_f64())
}

/// The processor's name, where the system tells it.
fn processor() -> String {
    let told = std::fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let name = told
        .lines()
        .find_map(|line| line.strip_prefix("model name")?.split_once(':'))
        .map(|(_, name)| name.trim());
    name.unwrap_or("a processor whose name is not told").to_owned()
}
