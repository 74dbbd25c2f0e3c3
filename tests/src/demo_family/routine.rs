//! What a day looks like: when something is done, before it is known what comes.

use crate::chance::Chance;

use super::story::{self, Life};

/// With what milk is expressed, or where Tavi drinks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum With {
    ByHand,
    WardPump,
    HomePump,
    HandPump,
    AtBreast,
    /// Tavi is given what was expressed.
    Given,
}

/// Something that happens at a second of its day.
#[derive(Debug, Clone, Copy)]
pub(super) struct Doing {
    pub(super) day: i64,
    pub(super) second: i64,
    pub(super) with: With,
    pub(super) place: &'static str,
}

/// All of one day, in order.
pub(super) fn of(day: i64) -> Vec<Doing> {
    let mut chance = Chance::on(day, "routine");
    let mut doings = Vec::new();
    for &hour in expressing_hours(day) {
        let second = (chance.around(hour, 0.14) * 3600.0) as i64;
        let slept_through = hour < 5.0 && chance.happens(0.06);
        let missed = chance.happens(0.02);
        if !slept_through && !missed {
            let place = place(day, hour);
            doings.push(Doing { day, second, with: means(day, hour, place), place });
        }
    }
    for &hour in breast_hours(day) {
        let second = (chance.around(hour, 0.08) * 3600.0) as i64;
        doings.push(Doing { day, second, with: With::AtBreast, place: place(day, hour) });
    }
    for &hour in given_hours(day) {
        let second = (chance.around(hour, 0.05) * 3600.0) as i64;
        doings.push(Doing { day, second, with: With::Given, place: place(day, hour) });
    }
    doings.retain(|doing| (0..86_400).contains(&doing.second));
    doings.retain(|doing| day > 0 || doing.second > 8 * 3600);
    doings.retain(|doing| day < story::LAST || doing.second < story::LAST_MINUTE * 60);
    doings.sort_by_key(|doing| doing.second);
    doings
}

/// About eight times a day at first, five at last.
fn expressing_hours(day: i64) -> &'static [f64] {
    match story::life(day) {
        Life::OnWard => &[2.9, 6.1, 9.3, 11.8, 14.6, 17.4, 20.3, 23.2],
        Life::BetweenWardAndHome => &[3.1, 6.3, 9.4, 12.2, 15.0, 17.8, 20.5, 23.3],
        Life::AtWork => &[5.7, 9.6, 13.0, 17.8, 22.2],
        Life::Away => &[4.4, 8.6, 12.5, 16.8, 22.3],
        Life::AtHome if day < 80 => &[3.4, 6.7, 9.9, 13.1, 16.3, 19.6, 22.8],
        Life::AtHome if day < story::BACK_TO_WORK => &[4.2, 7.5, 11.2, 14.9, 18.6, 22.5],
        Life::AtHome => &[5.6, 11.4, 14.2, 18.4, 22.3],
    }
}

fn breast_hours(day: i64) -> &'static [f64] {
    match story::life(day) {
        Life::BetweenWardAndHome if day < story::FIRST_AT_BREAST => &[],
        Life::BetweenWardAndHome if day < 46 => &[13.7],
        Life::BetweenWardAndHome => &[11.1, 16.4],
        Life::AtHome if day < 80 => &[8.3, 14.7, 18.0],
        Life::AtHome => &[9.4, 16.7, 20.4],
        Life::Away => &[10.6, 19.5],
        Life::AtWork => &[7.0, 19.7],
        Life::OnWard => &[],
    }
}

fn given_hours(day: i64) -> &'static [f64] {
    match story::life(day) {
        Life::OnWard if day == 0 => &[],
        Life::OnWard => &[10.5, 16.0],
        Life::BetweenWardAndHome => &[10.2, 13.2, 19.1],
        Life::AtHome => &[1.0, 12.4, 21.6],
        Life::Away => &[6.2, 14.5],
        Life::AtWork => &[8.5, 15.2],
    }
}

fn place(day: i64, hour: f64) -> &'static str {
    let by_day = (8.5..20.8).contains(&hour);
    match story::life(day) {
        Life::OnWard => "neonatal_unit",
        Life::BetweenWardAndHome if by_day => "neonatal_unit",
        Life::AtWork if (9.0..16.0).contains(&hour) => "work",
        Life::Away if by_day => "on_the_way",
        _ => "home",
    }
}

fn means(day: i64, hour: f64, place: &str) -> With {
    match place {
        "neonatal_unit" if day == 0 || (day == 1 && hour < 9.0) => With::ByHand,
        "neonatal_unit" => With::WardPump,
        "on_the_way" => With::HandPump,
        _ => With::HomePump,
    }
}
