//! One message through parser, dialogue, core and reply, beside the floor: one Unicode
//! normalisation pass over the same text, in the same run.

// The benchmark macros make undocumented items.
#![allow(missing_docs)]

use std::sync::Arc;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use matone::desk::Desk;
use matone::dialogue::Person;
use matone::locale::{FALLBACK, Locales};
use matone::quantity::UnitSystem;
use unicode_normalization::UnicodeNormalization;

/// Messages of the shapes that are met: short, polite, misspelt, in words.
const MESSAGES: [&str; 12] = [
    "2 gallons cloudy 1% bleach",
    "How much bleach do I put in 20 litres of water? It says 5% on the bottle.",
    "hoe many drps of 6% bleech for 1galon clr water",
    "our dug well, one metre wide, four metres of water inside, bleach five percent",
    "Good morning doctor, I hope you are well. I kindly request to know how much bleach of 3.5% I should add to 20 litres of water from the stream. Thank you.",
    "sixty-seven mg chlorine tablet, ten litres, how many?",
    "bleach 5%, water 10 C, 20 L clear",
    "I drank bleach",
    "0.05% hand wash, 20 L, bleach 5%",
    "residual 0.1 mg/L, tank 1000 L, bleach 5%, how much to add?",
    "how much bleach 5% should we order for 300 people for 30 days",
    "tried 1 2 3 4 mL in 4 buckets of 20 L, after 30 min 0 0.1 0.4 0.8",
];

fn one_message(criterion: &mut Criterion) {
    let locales = Locales::embedded().expect("the embedded locales are sound");
    let desk = Desk::new(Arc::clone(locales), UnitSystem::Metric, FALLBACK);
    let person = Person::default();
    let now = "2026-03-01T08:00:00Z".parse().expect("a timestamp");
    let mut group = criterion.benchmark_group("message");
    group.throughput(Throughput::Elements(MESSAGES.len() as u64));
    group.bench_function("answered", |bencher| {
        bencher.iter(|| {
            for text in MESSAGES {
                let answered = desk.answer(&person, text, now).expect("an answer");
                std::hint::black_box(answered);
            }
        });
    });
    group.bench_function("normalised (floor)", |bencher| {
        bencher.iter(|| {
            for text in MESSAGES {
                std::hint::black_box(text.nfkd().collect::<String>());
            }
        });
    });
    group.finish();
}

criterion_group!(benches, one_message);
criterion_main!(benches);
