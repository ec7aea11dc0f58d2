//! The sample workshop.
#[test]
fn look() {
    use benchwright::{assess::Answers, photo::drawing, rules::Rules, store::sample};
    let folder = tempfile::tempdir().unwrap();
    let today = chrono::NaiveDate::from_ymd_opt(2026, 11, 24).unwrap();
    let start = std::time::Instant::now();
    let store = sample::create(&folder.path().join("w"), today, drawing::draw_jpeg).unwrap();
    eprintln!("made in {:?}", start.elapsed());
    let (logbook, rules) = (store.logbook(), Rules::shipped());
    let answers = Answers::of(&logbook, &rules, today);
    for m in &answers.machines {
        eprintln!("== {} at {:?} power {:?}", m.file.machine.name, m.readiness.at, m.readiness.power.verdict);
        for g in &m.readiness.gates {
            eprintln!("   {:?} {:?}", g.gate, g.state);
            for r in g.holding().take(8) { eprintln!("      {}", r.sentence(&logbook, &rules)); }
        }
    }
    let start = std::time::Instant::now();
    let store = benchwright::store::invent::create(&folder.path().join("i"), today, 500, 3).unwrap();
    let l = store.logbook();
    eprintln!("500 in {:?}: findings {} caps {} machines {}", start.elapsed(), l.parts.iter().map(|p| p.findings.len()).sum::<usize>(), l.parts.iter().map(|p| p.capacitors.len()).sum::<usize>(), l.machines.len());
}
