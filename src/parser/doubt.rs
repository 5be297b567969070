//! What was read and cannot be relied on.

use crate::request::{Field, Product};

/// Why a fact of the message is left out. Each names the question that settles it.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    Hash,
    PartialOrd,
    Ord,
    strum::IntoStaticStr,
    strum::VariantArray,
)]
#[strum(serialize_all = "kebab-case")]
pub enum Doubt {
    /// "Bleach tablets": for toilets or for water?
    BleachTablet,
    /// "Chlorine" and nothing else.
    ChlorineForm,
    /// No or too many days.
    DaysOutside,
    /// Degrees, of what kind is not said.
    Degrees,
    /// A well that is no well.
    DiameterOutside,
    /// "Iodine" and nothing else.
    IodineForm,
    /// No or too many people.
    PeopleOutside,
    /// No product to speak of, or more than there can be.
    StockOutside,
    /// "It is not 5%."
    StrengthDenied,
    /// "Maybe 3%."
    StrengthGuessed,
    /// "Less than 5%."
    StrengthBound,
    /// Outside what the product can have.
    StrengthOutside,
    /// A few ppm: what is wanted in the water, not what is in the bottle.
    StrengthIsTarget,
    /// So weak that it is a solution for cleaning, it seems, and not the label.
    StrengthIsSolution,
    /// Thinned by somebody.
    StrengthThinned,
    /// Two figures.
    StrengthTwo,
    /// Garbled, or readable in two ways.
    StrengthUnreadable,
    /// A range too wide to take its lower end.
    StrengthWide,
    /// The label does not say.
    Unlabelled,
    /// Pool chlorine, or anything stabilised.
    Pool,
    /// Powder of an unknown kind.
    PowderForm,
    /// Scented, thickened, coloured.
    Spoiled,
    /// Tablets of an unknown kind.
    TabletForm,
    /// Two sizes of tablet.
    TabletTwo,
    /// The mass of the compound, it seems, and not of the iodine in it.
    TabletCompound,
    /// Outside what a tablet can have.
    TabletOutside,
    /// A solution of no strength, or stronger than any.
    TargetOutside,
    /// A solution that is to be stronger than what it is made of.
    TargetTooStrong,
    /// Two products.
    TwoProducts,
    /// This product is not for cleaning, hands or stock solutions.
    UnfitForCleaning,
    /// This product does not raise a chlorine residual.
    UnfitForResidual,
    /// How far this product goes is told by its label only.
    UnfitForSupply,
    /// This product is not for wells.
    UnfitForWell,
    /// Several containers of a stated size, and not how many.
    VolumeUncounted,
    /// A container whose size is not said.
    VolumeUnsized,
    /// Too little or too much.
    VolumeOutside,
    /// Two volumes that are no sum.
    VolumeTwo,
    /// Garbled, or readable in two ways.
    VolumeUnreadable,
    /// No water, or deeper than any.
    WaterDepthOutside,
    /// The depth of the well, which is not that of its water.
    WellDepthOnly,
}

impl Doubt {
    /// The field that it leaves open.
    #[must_use]
    pub const fn field(self) -> Field {
        match self {
            Self::BleachTablet
            | Self::ChlorineForm
            | Self::IodineForm
            | Self::Pool
            | Self::PowderForm
            | Self::Spoiled
            | Self::TabletForm
            | Self::TwoProducts
            | Self::UnfitForCleaning
            | Self::UnfitForResidual
            | Self::UnfitForSupply
            | Self::UnfitForWell => Field::Product,
            Self::DaysOutside => Field::Days,
            Self::DiameterOutside => Field::DiameterM,
            Self::PeopleOutside => Field::People,
            Self::StockOutside => Field::StockMl,
            Self::TargetOutside | Self::TargetTooStrong => Field::TargetPercent,
            Self::WaterDepthOutside | Self::WellDepthOnly => Field::WaterDepthM,
            Self::Degrees
            | Self::StrengthBound
            | Self::StrengthDenied
            | Self::StrengthGuessed
            | Self::StrengthIsTarget
            | Self::StrengthOutside
            | Self::StrengthIsSolution
            | Self::StrengthThinned
            | Self::StrengthTwo
            | Self::StrengthUnreadable
            | Self::StrengthWide
            | Self::Unlabelled => Field::StrengthPercent,
            Self::TabletCompound | Self::TabletOutside | Self::TabletTwo => Field::TabletMg,
            Self::VolumeOutside
            | Self::VolumeTwo
            | Self::VolumeUncounted
            | Self::VolumeUnreadable
            | Self::VolumeUnsized => Field::VolumeL,
        }
    }
}

/// The percentages that a product can have.
#[must_use]
pub fn strength_limit(product: Product) -> crate::quantity::Limit {
    use crate::quantity::limit;
    match product {
        Product::Bleach | Product::ChlorineDioxide | Product::Nadcc | Product::IodineTablet => {
            limit::BLEACH
        }
        Product::BleachingPowder => limit::BLEACHING_POWDER,
        Product::CalciumHypochlorite => limit::CALCIUM_HYPOCHLORITE,
        Product::IodineTincture => limit::TINCTURE,
        Product::PovidoneIodine => limit::POVIDONE_IODINE,
    }
}
