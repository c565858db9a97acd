use hubwright::wheel::read_marking;
#[test]
fn show() {
    for t in [
        "40A 60 K 7 V A1",
        "A36-L5-V",
        "A16 R 5 B S4 wheel 610 x 80 x 254",
        "300 x 30 x 42 W A 46 L 4 V 17",
        "type 41 400 x 4.0 x 32 14A 80-H 41-43 BF 80 m/s unbalance class 2",
        "A60K7V",
        "a60k7v 35m/s",
        "38A602-K8VBE",
        "C 120 M 5 B",
        "A24RBF",
        "A24BF RE1",
        "A60V",
        "1A1 200-20-5-31.75 D126 C100 B",
        "11V9 B151 V C150",
        "D 126 C75 M",
        "1A1R 150 x 1 x 20 mm D91 R100 B",
        "D120-N100B",
        "B54V240",
        "12 250 rpm A60K5V",
        "A60K5V 3.820 rpm",
        "A60K5V max. 3820 min-1 50 m/s",
        "A46 H 8 V 40 m/s 35 m/s",
        "7 x 1/2 x 1-1/4 A60K8V",
        "7 x 1 x 1 A60K8V",
        "8\" x 1\" x 1-1/4\" A60K8V",
        "WA 46 K 8 V",
        "A24R5BF15 T41 RE 2 RE5",
        "ABC xyz",
        "Ä60K",
        "125 x 1 x 22,23 A60S4BF 80 m/s",
        "A601K7V",
        "A 60 K 18 V",
        "A60KV17",
        "BF",
        "6A2 D64 M C50",
        "A24 R B 54",
        "C100K5V",
    ] {
        let m = read_marking(t).unwrap();
        println!(
            "{t:60} -> {m}\n      unread {:?} doubts {:?}",
            m.unread.iter().map(|u| (&u.text, u.why)).collect::<Vec<_>>(),
            m.doubts
        );
    }
}
