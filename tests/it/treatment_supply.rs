//! How far a stock goes, and how much to order.

use matone::quantity::{
    Days, Headcount, StockGrams, StockMl, StockTablets, Strength, TabletMass, limit,
};
use matone::request::{Clarity, Refusal};
use matone::treatment::{
    Agent, Caution, Detail, Measure, Order, Outcome, Served, Source, Stock, SupplyFinding,
    SupplyOrder, SupplyQuestion, Verdict, treat,
};
use proptest::prelude::*;
use proptest::sample::select;

use super::published::{CLOUDY, PLAIN, answer, litres, metric, mg, percent, rows};

fn ask(agent: Agent, question: SupplyQuestion, clarity: Option<Clarity>) -> Verdict {
    treat(&Order::Supply(SupplyOrder {
        agent,
        question,
        clarity,
        served: Served::People,
    }))
}

fn supply(agent: Agent, question: SupplyQuestion) -> (Outcome, SupplyFinding) {
    found(ask(agent, question, None))
}

fn found(verdict: Verdict) -> (Outcome, SupplyFinding) {
    let outcome = verdict.expect("not refused");
    let finding = match outcome.detail {
        Detail::Supply(finding) => finding,
        _ => panic!("no supply: {outcome:?}"),
    };
    (outcome, finding)
}

fn ml(value: f64) -> Stock {
    Stock::Liquid(StockMl::from_ml(value).expect("a stock"))
}

fn grams(value: f64) -> Stock {
    Stock::Powder(StockGrams::from_grams(value).expect("a stock"))
}

fn pieces(value: f64) -> Stock {
    Stock::Tablets(StockTablets::from_count(value).expect("a stock"))
}

fn people(value: f64) -> Headcount {
    Headcount::from_people(value).expect("people")
}

fn days(value: f64) -> Days {
    Days::from_days(value).expect("days")
}

fn bleach(strength: f64) -> Agent {
    Agent::Bleach(percent(strength))
}

/// mL, grams or tablets.
fn amount(measure: Measure) -> f64 {
    match measure {
        Measure::Liquid(liquid) => liquid.ml,
        Measure::Powder(powder) => powder.grams,
        Measure::Tablets(count) => f64::from(count),
        Measure::ByLabel | Measure::Nothing => 0.0,
    }
}

/// The greater ends of the published figures: US aid field guide and Sphere.
#[test]
fn litres_for_a_person_are_the_published_ones() {
    let (_, finding) = supply(bleach(5.0), SupplyQuestion::Treats(ml(1000.0)));
    let most = |item: &str| {
        rows("residual_and_limits")
            .iter()
            .find(|row| row.text("item") == item)
            .map(|row| row.number("value_max"))
    };
    assert_eq!(
        most("US aid field guide total"),
        Some(finding.litres_per_person)
    );
    assert_eq!(most("Sphere total basic"), Some(finding.litres_per_person));
    assert_eq!(
        most("Sphere drinking and food"),
        Some(finding.drinking_litres_per_person)
    );
}

#[test]
fn a_litre_of_bleach() {
    // Two drops a litre: 0.1 mL.
    let (outcome, finding) = supply(bleach(5.0), SupplyQuestion::Treats(ml(1000.0)));
    assert_eq!(finding.treats_litres, 10_000.0);
    assert_eq!((outcome.measure, outcome.dose), (Measure::Nothing, None));
    let cloudy = ask(
        bleach(5.0),
        SupplyQuestion::Treats(ml(1000.0)),
        Some(Clarity::Cloudy),
    );
    assert_eq!(found(cloudy).1.treats_litres, 5_000.0);
    // 10,000 L for 7 people: 95.2 days; drinking alone 476.
    let (_, lasts) = supply(bleach(5.0), SupplyQuestion::Lasts(ml(1000.0), people(7.0)));
    assert_eq!((lasts.days, lasts.drinking_days), (Some(95.0), Some(476.0)));
    // For 100: 6.66.
    let (_, lasts) = supply(
        bleach(5.0),
        SupplyQuestion::Lasts(ml(1000.0), people(100.0)),
    );
    assert_eq!((lasts.days, lasts.drinking_days), (Some(6.6), Some(33.0)));
    let (_, serves) = supply(bleach(5.0), SupplyQuestion::Serves(ml(1000.0), days(30.0)));
    assert_eq!(
        (serves.people, serves.drinking_people),
        (Some(22.0), Some(111.0))
    );
}

#[test]
fn an_order_has_a_margin() {
    // 500 people x 15 L x 30 days = 225,000 L; 22.5 L of 5% bleach, and a fifth more.
    let (outcome, finding) = supply(
        bleach(5.0),
        SupplyQuestion::Needs(people(500.0), days(30.0)),
    );
    assert_eq!(finding.treats_litres, 225_000.0);
    assert_eq!(finding.bare_need.map(amount), Some(23_000.0));
    assert_eq!(
        (amount(outcome.measure), finding.margin_percent),
        (27_000.0, 20.0)
    );
    for source in [
        Source::Sphere2011,
        Source::UsaidFieldOperationsGuide,
        Source::CommonPractice,
    ] {
        assert!(outcome.sources.contains(&source), "{source:?}");
    }
    // 225,000 L x 5 mg/L = 1125 g of chlorine.
    let powder = Agent::CalciumHypochlorite(percent(70.0));
    let (outcome, finding) = supply(powder, SupplyQuestion::Needs(people(500.0), days(30.0)));
    assert_eq!(finding.bare_need.map(amount), Some(1700.0));
    assert_eq!(amount(outcome.measure), 2000.0);
    // A tablet of 67 mg for 10 L.
    let tablets = Agent::Nadcc(mg(67.0), None);
    let (outcome, finding) = supply(tablets, SupplyQuestion::Needs(people(500.0), days(30.0)));
    assert_eq!(finding.bare_need, Some(Measure::Tablets(22_500)));
    assert_eq!(outcome.measure, Measure::Tablets(27_000));
}

/// A country for ten years: drops end at what they can hold, mL do not.
#[test]
fn the_largest_order_is_still_right_in_ml() {
    let (outcome, finding) = supply(
        bleach(0.1),
        SupplyQuestion::Needs(people(1e7), days(3660.0)),
    );
    let Measure::Liquid(liquid) = outcome.measure else {
        panic!("{outcome:?}")
    };
    // 5.49e11 L at 5 mg/L from 1 mg/mL, and a fifth more: 3.294e12 mL.
    assert_eq!(
        (liquid.ml, liquid.drops, liquid.spoon),
        (3.3e12, u32::MAX, None)
    );
    assert_eq!(finding.bare_need.map(amount), Some(2.8e12));
}

/// 67 mg: 10 L, or the label's 20; the half tablet in the box treats nothing.
#[test]
fn tablets_by_the_exact_count() {
    let treats = |agent, stock| supply(agent, SupplyQuestion::Treats(stock)).1.treats_litres;
    assert_eq!(treats(Agent::Nadcc(mg(67.0), None), pieces(100.5)), 1000.0);
    assert_eq!(
        treats(Agent::Nadcc(mg(67.0), Some(litres(20.0))), pieces(100.0)),
        2000.0
    );
    assert_eq!(treats(Agent::IodineTablet(mg(8.0)), pieces(50.0)), 100.0);
}

// DIFFERENCE from dosing can by can: a tablet of 167 mg is for 25 L, and whoever puts a whole one
// into each can of 20 L treats 2,000 L with a hundred, not 2,500.
#[test]
fn whole_tablets_for_each_can_reach_less_far() {
    let agent = Agent::Nadcc(mg(167.0), None);
    let (_, finding) = supply(agent, SupplyQuestion::Treats(pieces(100.0)));
    assert_eq!(finding.treats_litres, 2_500.0);
    assert_eq!(amount(answer(&metric(agent, 20.0, PLAIN)).measure), 1.0);
}

/// One 30 mL bottle of povidone-iodine: 75 L (DECISIONS).
#[test]
fn a_bottle_of_povidone_iodine() {
    let agent = Agent::PovidoneIodine(percent(10.0));
    let (outcome, finding) = supply(agent, SupplyQuestion::Treats(ml(30.0)));
    assert_eq!(finding.treats_litres, 75.0);
    assert_eq!(outcome.cautions, [Caution::IodineUnsuitable]);
    assert!(
        supply(bleach(5.0), SupplyQuestion::Treats(ml(30.0)))
            .0
            .cautions
            .is_empty()
    );
}

/// Nobody drinks iodine beyond a few weeks (DECISIONS; the customary three).
#[test]
fn iodine_is_not_planned_for_longer_than_three_weeks() {
    let agent = Agent::IodineTincture(percent(2.0));
    for question in [
        SupplyQuestion::Needs(people(5.0), days(22.0)),
        SupplyQuestion::Serves(ml(100.0), days(22.0)),
    ] {
        assert_eq!(ask(agent, question, None), Err(Refusal::IodineUnsuitable));
        assert!(ask(bleach(5.0), question, None).is_ok());
    }
    assert!(ask(agent, SupplyQuestion::Needs(people(5.0), days(21.0)), None).is_ok());
}

#[test]
fn what_cannot_be_answered_is_refused() {
    for (agent, stock) in [
        (Agent::ChlorineDioxide, ml(100.0)),
        (Agent::ChlorineDioxide, pieces(100.0)),
        (bleach(5.0), grams(100.0)),
        (Agent::CalciumHypochlorite(percent(70.0)), ml(100.0)),
        (Agent::Nadcc(mg(67.0), None), grams(100.0)),
    ] {
        assert_eq!(
            ask(agent, SupplyQuestion::Treats(stock), None),
            Err(Refusal::OtherUse),
            "{agent:?}"
        );
    }
}

fn within(limit: limit::Limit) -> impl Strategy<Value = f64> {
    (limit.min.ln()..=limit.max.ln()).prop_map(move |x| x.exp().clamp(limit.min, limit.max))
}

/// A product and a stock in its form.
fn stocked() -> impl Strategy<Value = (Agent, Stock)> {
    let strength =
        |limit| within(limit).prop_map(|value| Strength::from_percent(value).expect("a strength"));
    let tablet = |limit| within(limit).prop_map(|value| TabletMass::from_mg(value).expect("mg"));
    let liquid = || within(limit::STOCK_ML).prop_map(ml);
    let count = || within(limit::STOCK_TABLETS).prop_map(pieces);
    prop_oneof![
        (strength(limit::BLEACH).prop_map(Agent::Bleach), liquid()),
        (
            strength(limit::TINCTURE).prop_map(Agent::IodineTincture),
            liquid()
        ),
        (
            strength(limit::POVIDONE_IODINE).prop_map(Agent::PovidoneIodine),
            liquid()
        ),
        (
            strength(limit::CALCIUM_HYPOCHLORITE).prop_map(Agent::CalciumHypochlorite),
            within(limit::STOCK_GRAMS).prop_map(grams)
        ),
        (
            (
                tablet(limit::CHLORINE_TABLET),
                proptest::option::of(within(limit::VOLUME))
            )
                .prop_map(|(mass, label)| Agent::Nadcc(mass, label.map(litres))),
            count()
        ),
        (
            tablet(limit::IODINE_TABLET).prop_map(Agent::IodineTablet),
            count()
        ),
    ]
}

fn held(stock: Stock) -> f64 {
    match stock {
        Stock::Liquid(stock) => stock.ml(),
        Stock::Powder(stock) => stock.grams(),
        Stock::Tablets(stock) => stock.count(),
    }
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    /// What is needed for so many days lasts so many days.
    #[test]
    fn needs_and_lasts_are_inverse(
        (agent, _) in stocked(),
        heads in 1.0..1e5_f64,
        span in 1.0..=21.0_f64,
        clarity in select(vec![None, Some(Clarity::Cloudy)]),
    ) {
        let (heads, span) = (people(heads.floor()), days(span.floor()));
        let (ordered, finding) = found(ask(agent, SupplyQuestion::Needs(heads, span), clarity));
        let bare = finding.bare_need.expect("a need");
        prop_assert!(amount(ordered.measure) >= amount(bare));
        prop_assert!(amount(ordered.measure) <= amount(bare) * 1.2 * 1.25 + 1.0);
        // An order below the least stock believed cannot be asked about.
        prop_assume!(amount(bare) >= 1.0);
        let stock = match bare {
            Measure::Liquid(liquid) => ml(liquid.ml),
            Measure::Powder(powder) => grams(powder.grams),
            Measure::Tablets(count) => pieces(f64::from(count)),
            Measure::ByLabel | Measure::Nothing => panic!("nothing"),
        };
        let (_, lasts) = found(ask(agent, SupplyQuestion::Lasts(stock, heads), clarity));
        let lasts = lasts.days.expect("days");
        prop_assert!(lasts >= span.days(), "{lasts} of {}", span.days());
        // A tenth for rounding the order up, more where one tablet serves for longer.
        let one_more = 1.0 / amount(bare);
        prop_assert!(lasts <= span.days() * (1.25 + one_more) + 1.0, "{lasts} of {}", span.days());
    }

    /// The water promised, dosed as the program doses it, takes no more than the stock (but for
    /// what rounding a single dose adds).
    #[test]
    fn no_more_water_than_the_dose_allows(
        (agent, stock) in stocked(),
        clarity in select(vec![None, Some(Clarity::Cloudy)]),
    ) {
        let (_, finding) = found(ask(agent, SupplyQuestion::Treats(stock), clarity));
        let water = if clarity.is_some() { CLOUDY } else { PLAIN };
        // A large tank shows the dose for a litre almost unrounded.
        let tank = answer(&metric(agent, 20.0 * 50_000.0, water));
        let each = amount(tank.measure) / 1e6;
        // A row for a large volume in spoons holds a little more than its drops.
        let slack = match stock {
            Stock::Liquid(_) => 1.05,
            Stock::Powder(_) | Stock::Tablets(_) => 1.01,
        };
        prop_assert!(finding.treats_litres * each <= held(stock) * slack, "{each}");
        // And hardly less: it is rounded down to a litre at most.
        prop_assert!((finding.treats_litres + 1.0) * each * 1.01 >= held(stock).floor());
    }
}

/// As many litres as are told, and not the 15 of the field guide.
#[test]
fn litres_each_are_the_persons_own() {
    let each = |served| {
        let verdict = treat(&Order::Supply(SupplyOrder {
            agent: Agent::Bleach(percent(5.0)),
            question: SupplyQuestion::Needs(people(200.0), days(30.0)),
            clarity: None,
            served,
        }));
        let (outcome, finding) = found(verdict);
        (outcome.measure, finding)
    };
    let (_, told) = each(Served::With(litres(3.0)));
    assert_eq!(told.treats_litres, 18_000.0);
    assert_eq!(told.litres_per_person, 3.0);
    // 5 mg/L of 18000 L are 90 g, of 50 g/L: 1.8 L.
    assert_eq!(
        told.bare_need.map(
            |need| matches!(need, Measure::Liquid(liquid) if (liquid.ml - 1800.0).abs() < 1e-9)
        ),
        Some(true)
    );
    let (_, usual) = each(Served::People);
    assert_eq!(usual.litres_per_person, 15.0);
}
