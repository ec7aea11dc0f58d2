//! Sizes and the toolkit's own style, set once from the tokens.

use egui::style::{ScrollStyle, Selection, WidgetVisuals};
use egui::{CornerRadius, FontFamily, FontId, Margin, Stroke, Style, TextStyle, Theme, Visuals, vec2};

use super::{Ground, Tokens, fonts};

/// Everything stands on a grid of 4 points.
pub const GRID: f32 = 4.0;

/// What a text is for; sizes follow from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TextRole {
    /// The one thing that the eye meets first on a desk.
    First,
    /// A desk's title.
    Title,
    /// A section's heading.
    Section,
    /// Reading text.
    Body,
    /// Reading text that stands out.
    Strong,
    /// Remarks under and beside.
    Small,
    /// What is printed on parts.
    Marking,
}

impl TextRole {
    /// Face and size, points.
    pub fn font(self) -> FontId {
        match self {
            Self::First => FontId::new(28.0, fonts::bold()),
            Self::Title => FontId::new(20.0, fonts::bold()),
            Self::Section => FontId::new(16.0, fonts::bold()),
            Self::Body => FontId::new(15.0, FontFamily::Proportional),
            Self::Strong => FontId::new(15.0, fonts::bold()),
            Self::Small => FontId::new(13.0, FontFamily::Proportional),
            Self::Marking => FontId::new(14.0, FontFamily::Monospace),
        }
    }
}

/// Sets faces, sizes and colours for both grounds.
pub fn apply(ctx: &egui::Context) {
    ctx.set_fonts(fonts::definitions());
    for (theme, ground) in [(Theme::Light, Ground::LogPaper), (Theme::Dark, Ground::BenchMat)] {
        ctx.set_style_of(theme, style(theme, &Tokens::of(ground)));
    }
    ctx.options_mut(|options| {
        // Text size is a command of ours, so that it is kept and can be found.
        options.zoom_with_keyboard = false;
        // Where the desktop tells no preference.
        options.fallback_theme = Theme::Light;
    });
}

fn style(theme: Theme, tokens: &Tokens) -> Style {
    let mut style = Style { visuals: visuals(theme, tokens), ..Style::default() };
    style.text_styles = [
        (TextStyle::Small, TextRole::Small),
        (TextStyle::Body, TextRole::Body),
        (TextStyle::Button, TextRole::Body),
        (TextStyle::Heading, TextRole::Title),
        (TextStyle::Monospace, TextRole::Marking),
    ]
    .map(|(text, role)| (text, role.font()))
    .into();
    style.animation_time = 0.0;
    style.scroll_animation = egui::style::ScrollAnimation::none();
    style.interaction.selectable_labels = false;
    style.interaction.tooltip_delay = 0.4;
    let spacing = &mut style.spacing;
    spacing.item_spacing = vec2(2.0 * GRID, GRID);
    spacing.button_padding = vec2(3.0 * GRID, GRID);
    spacing.interact_size = vec2(10.0 * GRID, 7.0 * GRID);
    spacing.menu_margin = Margin::same(4);
    spacing.window_margin = Margin::same(16);
    spacing.icon_width = 4.0 * GRID;
    spacing.text_edit_width = 60.0 * GRID;
    spacing.combo_width = 30.0 * GRID;
    spacing.tooltip_width = 90.0 * GRID;
    spacing.indent = 4.0 * GRID;
    spacing.scroll = ScrollStyle { bar_width: 10.0, floating: false, ..ScrollStyle::solid() };
    style
}

fn visuals(theme: Theme, tokens: &Tokens) -> Visuals {
    let mut visuals = if theme == Theme::Dark { Visuals::dark() } else { Visuals::light() };
    let hairline = Stroke::new(1.0, tokens.hairline);
    let press = Stroke::new(1.0, tokens.press);
    let corner_radius = CornerRadius::same(3);
    let widget = |ground, edge: Stroke, text| WidgetVisuals {
        bg_fill: ground,
        weak_bg_fill: ground,
        bg_stroke: edge,
        corner_radius,
        fg_stroke: Stroke::new(1.0, text),
        expansion: 0.0,
    };
    visuals.override_text_color = None;
    visuals.weak_text_color = Some(tokens.ink_weak);
    visuals.widgets.noninteractive = widget(tokens.page, hairline, tokens.ink);
    visuals.widgets.inactive = widget(tokens.field, hairline, tokens.press);
    visuals.widgets.hovered = widget(tokens.press_wash, press, tokens.press);
    visuals.widgets.active = widget(tokens.press, press, tokens.press_ink);
    visuals.widgets.open = widget(tokens.press_wash, press, tokens.press);
    visuals.selection = Selection { bg_fill: tokens.selected, stroke: Stroke::new(2.0, tokens.press) };
    visuals.hyperlink_color = tokens.press;
    visuals.faint_bg_color = tokens.rail;
    visuals.extreme_bg_color = tokens.field;
    visuals.text_edit_bg_color = Some(tokens.field);
    visuals.code_bg_color = tokens.field;
    visuals.warn_fg_color = tokens.power_unknown;
    visuals.error_fg_color = tokens.power_no;
    visuals.window_fill = tokens.page;
    visuals.window_stroke = hairline;
    visuals.window_corner_radius = corner_radius;
    visuals.menu_corner_radius = corner_radius;
    visuals.window_shadow.color = tokens.shadow;
    visuals.popup_shadow.color = tokens.shadow;
    visuals.panel_fill = tokens.page;
    visuals.button_frame = true;
    visuals.striped = false;
    visuals.disabled_alpha = 0.6;
    visuals.text_cursor.stroke = Stroke::new(2.0, tokens.press);
    // A blinking cursor would keep an idle window drawing.
    visuals.text_cursor.blink = false;
    visuals.image_loading_spinners = false;
    visuals
}
