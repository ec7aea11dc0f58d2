//! Tables of positions and of materials, as people paste them: read line by line, refused by line and column.

use benchwright::record::{
    BadLine, BadTable, CapacitorState, CapacitorUse, Dielectric, Material, Mounting, read_materials, read_positions,
};
use benchwright::store::Store;

fn wrong(text: &str) -> Vec<(u64, String)> {
    read_positions(text)
        .unwrap()
        .into_iter()
        .filter_map(Result::err)
        .map(|BadLine { line, wrong }| (line, wrong))
        .collect()
}

#[test]
fn tabs_semicolons_and_commas_with_either_decimal_sign_say_the_same() {
    let tabs = "Designator\tValue\tVoltage\tHeight (mm)\nC1\t4.7\t6.3\t11\n";
    let semicolons = "Designator;Value;Voltage;Height\nC1;4,7;6,3;11\n";
    let commas = "Designator,Value,Voltage,Height\nC1,\"4,7\",\"6,3\",11\n";
    let mut read = [tabs, semicolons, commas].map(|text| read_positions(text).unwrap().remove(0).unwrap().position);
    let one = &read[0];
    assert_eq!((one.capacitance_uf, one.voltage_v, one.height_mm), (Some(4.7), Some(6.3), Some(11.0)));
    read.rotate_left(1);
    assert!(read.iter().all(|other| *other == read[0]));
}

#[test]
fn words_are_known_by_their_names_labels_and_by_what_people_say() {
    let text = "name\ttype\tmounting\tfunction\tlow esr\tstate\tplace\nC7\twet\tsmd\tProcessor supply\tyes\tdomed\tnear the, socket\n";
    let one = read_positions(text).unwrap().remove(0).unwrap().position;
    assert_eq!((one.dielectric, one.mounting), (Dielectric::WetAluminium, Mounting::Surface));
    assert_eq!((one.function, one.low_esr), (Some(CapacitorUse::ProcessorSupply), Some(true)));
    assert_eq!((one.state, one.place_on_part.as_str()), (CapacitorState::Bulged, "near the, socket"));
}

#[test]
fn headings_that_are_no_columns_refuse_the_whole_table() {
    let of = |text| read_positions(text).unwrap_err();
    assert!(matches!(of("designator;colour\nC1;red\n"), BadTable::Column { column, .. } if column == "colour"));
    assert_eq!(of("designator;value;uF\nC1;1;2\n"), BadTable::Twice("uF".to_owned()));
    assert_eq!(of("value;voltage\n10;16\n"), BadTable::Lacks("designator".to_owned()));
    assert_eq!(of("designator\n"), BadTable::Empty);
    assert_eq!(of(""), BadTable::Empty);
}

#[test]
fn each_wrong_line_is_told_with_its_number_and_column() {
    let text = "designator;value;voltage;diameter\nC1;10;16;5\nC2;ten;16;5\nC3;10;-16;5\nC1;10;16;5\nC5;10;16;5000\n;1;2;3\nC6;1;2;3;4\n";
    let told = wrong(text);
    let lines: Vec<u64> = told.iter().map(|(line, _)| *line).collect();
    assert_eq!(lines, [3, 4, 5, 6, 7, 8]);
    assert!(told[0].1.contains("Value") && told[0].1.contains("ten"));
    assert!(told[1].1.contains("Voltage") && told[3].1.contains("Diameter") && told[3].1.contains("5000 mm"));
    assert!(told[2].1.contains("C1") && told[4].1.contains("designator") && told[5].1.contains('5'));
}

#[test]
fn a_figure_that_can_be_read_in_two_ways_is_refused() {
    assert_eq!(wrong("designator;value\nC1;1,000\n").len(), 1);
    assert_eq!(
        wrong("designator;value;voltage\nC1;1.000;6,3\n").len(),
        1,
        "beside a decimal comma a point parts thousands"
    );
    assert_eq!(wrong("designator;value\nC1;1.500,5\n").len(), 1);
    assert_eq!(wrong("designator;value;voltage\nC1;1.005;6.3\nC2;0,047;16\n").len(), 1, "two kinds in one table");
    assert!(wrong("designator\tvalue\nC1\t0,047\n").is_empty());
}

#[test]
fn negative_stock_is_refused_and_known_materials_keep_what_the_table_does_not_say() {
    let solder =
        Material { stock: 40.0, supplier: "Corner shop".to_owned(), ..Material::new(Store::new_id(), "Solder") };
    let known = |name: &str| (name.to_lowercase() == "solder").then_some(&solder);
    let text = "name,stock,unit,price\nsolder,55.5,g,0.12\nFlux,-3,ml,\n";
    let read = read_materials(text, known, &mut uuid::Uuid::now_v7).unwrap();
    let one = &read[0].as_ref().unwrap().material;
    assert_eq!((one.id, one.stock, one.unit.as_str(), one.price_cents), (solder.id, 55.5, "g", Some(12)));
    assert_eq!(one.supplier, "Corner shop");
    let wrong = read[1].as_ref().unwrap_err();
    assert!(wrong.line == 3 && wrong.wrong.contains("Stock") && wrong.wrong.contains("-3"), "{wrong:?}");
}
