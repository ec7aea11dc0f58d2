use benchwright::photo::drawing;
use benchwright::store::sample::{Shape, Subject};
#[test]
fn look() {
    let mut sheet = image::RgbImage::new(1600, 1600);
    for (i, shape) in [
        Shape::Board,
        Shape::Card,
        Shape::Module,
        Shape::Cartridge,
        Shape::Chip,
        Shape::Disk,
        Shape::Face,
        Shape::Supply,
        Shape::Desktop,
        Shape::Tower,
        Shape::Keyboard,
        Shape::Monitor,
        Shape::Small,
    ]
    .into_iter()
    .enumerate()
    {
        let s = Subject {
            shape,
            title: "KESTREL 540".into(),
            lines: vec!["LR80486".into(), "REV 1.2".into(), "5V 0.4A 12V 0.6A".into()],
            slots: ["isa", "isa", "vlb", "pci", "agp"].map(String::from).to_vec(),
            cell: "barrel".into(),
            crust: Some([0.8, 0.2, 0.06]),
            cans: 12,
            domed: 3,
            fresh: 3,
            chips: 4,
            seed: 7,
            front: vec!["optical".into(), "floppy".into(), "blank".into()],
            ..Subject::default()
        };
        let img = drawing::draw(&s);
        if i == 0 {
            img.save("/tmp/s/board.png").unwrap();
        }
        let small = image::imageops::thumbnail(&img, 400, 300);
        image::imageops::replace(&mut sheet, &small, (i as i64 % 4) * 400, (i as i64 / 4) * 300);
    }
    sheet.save("/tmp/s/sheet.png").unwrap();
}
