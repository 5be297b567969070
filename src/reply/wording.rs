//! What a message is made of, without its arguments: for comparing translations.

use std::collections::{BTreeMap, BTreeSet};

use fluent_bundle::FluentResource;
use fluent_syntax::ast;

/// A message's text and what it takes.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Wording {
    /// Its text in all forms, without what is filled in.
    pub text: String,
    /// The variables that are filled in or that choose a form.
    pub variables: BTreeSet<String>,
    /// For each place that chooses among forms: the forms.
    pub selections: Vec<BTreeSet<String>>,
}

/// All messages of a file.
pub(super) fn wordings(resource: &FluentResource) -> BTreeMap<String, Wording> {
    resource
        .entries()
        .filter_map(|entry| match entry {
            ast::Entry::Message(message) => {
                let mut wording = Wording::default();
                wording.pattern(message.value.as_ref()?);
                Some((message.id.name.to_owned(), wording))
            }
            ast::Entry::Term(_)
            | ast::Entry::Comment(_)
            | ast::Entry::GroupComment(_)
            | ast::Entry::ResourceComment(_)
            | ast::Entry::Junk { .. } => None,
        })
        .collect()
}

impl Wording {
    fn pattern(&mut self, pattern: &ast::Pattern<&str>) {
        for element in &pattern.elements {
            match element {
                ast::PatternElement::TextElement { value } => self.text.push_str(value),
                ast::PatternElement::Placeable { expression } => self.expression(expression),
            }
        }
    }

    fn expression(&mut self, expression: &ast::Expression<&str>) {
        match expression {
            ast::Expression::Inline(inline) => self.inline(inline),
            ast::Expression::Select { selector, variants } => {
                self.inline(selector);
                let mut forms = BTreeSet::new();
                for variant in variants {
                    let (ast::VariantKey::Identifier { name: form }
                    | ast::VariantKey::NumberLiteral { value: form }) = variant.key;
                    forms.insert(form.to_owned());
                    self.pattern(&variant.value);
                }
                self.selections.push(forms);
            }
        }
    }

    fn inline(&mut self, inline: &ast::InlineExpression<&str>) {
        match inline {
            ast::InlineExpression::StringLiteral { value }
            | ast::InlineExpression::NumberLiteral { value } => self.text.push_str(value),
            ast::InlineExpression::VariableReference { id } => {
                self.variables.insert(id.name.to_owned());
            }
            ast::InlineExpression::Placeable { expression } => self.expression(expression),
            ast::InlineExpression::FunctionReference { .. }
            | ast::InlineExpression::MessageReference { .. }
            | ast::InlineExpression::TermReference { .. } => {}
        }
    }
}
