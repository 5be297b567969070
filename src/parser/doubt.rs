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
    /// Degrees, of what kind is not said.
    Degrees,
    /// "Iodine" and nothing else.
    IodineForm,
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
    /// Two products.
    TwoProducts,
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
            | Self::TwoProducts => Field::Product,
            Self::Degrees
            | Self::StrengthBound
            | Self::StrengthDenied
            | Self::StrengthGuessed
            | Self::StrengthIsTarget
            | Self::StrengthOutside
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
