//! A drawing as SVG: roles become classes, so that a style sheet colours it.

use std::fmt::Write;

use super::{Anchor, Drawing, Point, Role, Shape, Stroke, arrow_head};

impl Drawing {
    /// The drawing as an SVG element. It holds no colours: fills carry the class
    /// `fill-<role>`, lines `line-<role>`, words `word-<role>` and, where they
    /// are semi-bold, `strong`.
    #[must_use]
    pub fn to_svg(&self) -> String {
        let mut svg = String::new();
        let text = escape(&self.description);
        // Writing to a string cannot fail.
        let _ = write!(
            svg,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {} {}\" role=\"img\" \
             aria-label=\"{text}\"><title>{text}</title>",
            number(self.width),
            number(self.height),
        );
        for item in &self.items {
            shape(&mut svg, item);
        }
        svg.push_str("</svg>");
        svg
    }
}

fn shape(svg: &mut String, shape: &Shape) {
    let _ = match shape {
        Shape::Polyline { points, stroke } => {
            let paint = paint(None, Some(*stroke));
            write!(svg, "<polyline points=\"{}\"{paint}/>", list(points))
        }
        Shape::Polygon {
            points,
            fill,
            stroke,
        } => {
            let paint = paint(*fill, *stroke);
            write!(svg, "<polygon points=\"{}\"{paint}/>", list(points))
        }
        Shape::Box {
            at,
            width,
            height,
            radius,
            fill,
            stroke,
        } => write!(
            svg,
            "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" rx=\"{}\"{}/>",
            number(at.x),
            number(at.y),
            number(*width),
            number(*height),
            number(*radius),
            paint(*fill, *stroke),
        ),
        Shape::Circle {
            centre,
            radius,
            fill,
            stroke,
        } => write!(
            svg,
            "<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{}/>",
            number(centre.x),
            number(centre.y),
            number(*radius),
            paint(*fill, *stroke),
        ),
        Shape::Arrow { points, stroke } => {
            let line = paint(None, Some(*stroke));
            let mut written = write!(svg, "<polyline points=\"{}\"{line}/>", list(points));
            if let [.., from, tip] = points.as_slice()
                && let Some(head) = arrow_head(*from, *tip, stroke.width)
            {
                let fill = paint(Some(stroke.role), None);
                written = write!(svg, "<polygon points=\"{}\"{fill}/>", list(&head));
            }
            written
        }
        Shape::Label {
            at,
            text,
            size,
            anchor,
            strong,
            role,
        } => {
            let anchor = match anchor {
                Anchor::Start => "start",
                Anchor::Middle => "middle",
                Anchor::End => "end",
            };
            let strong = if *strong { " strong" } else { "" };
            write!(
                svg,
                "<text x=\"{}\" y=\"{}\" font-size=\"{}\" text-anchor=\"{anchor}\" \
                 class=\"word-{}{strong}\">{}</text>",
                number(at.x),
                number(at.y),
                number(*size),
                role.name(),
                escape(text),
            )
        }
    };
}

fn paint(fill: Option<Role>, stroke: Option<Stroke>) -> String {
    let mut classes = Vec::new();
    let mut attributes = String::new();
    match fill {
        Some(role) => classes.push(format!("fill-{}", role.name())),
        None => attributes.push_str(" fill=\"none\""),
    }
    if let Some(stroke) = stroke {
        classes.push(format!("line-{}", stroke.role.name()));
        let _ = write!(attributes, " stroke-width=\"{}\"", number(stroke.width));
        if stroke.dashed {
            attributes.push_str(" stroke-dasharray=\"3.5 2.5\"");
        }
    }
    format!(" class=\"{}\"{attributes}", classes.join(" "))
}

fn list(points: &[Point]) -> String {
    let pairs: Vec<String> = points
        .iter()
        .map(|point| format!("{},{}", number(point.x), number(point.y)))
        .collect();
    pairs.join(" ")
}

/// At most two decimals; anything that is no number becomes 0.
fn number(value: f32) -> String {
    if !value.is_finite() {
        return "0".to_owned();
    }
    let text = format!("{value:.2}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" {
        "0".to_owned()
    } else {
        text.to_owned()
    }
}

/// Text for element content and attribute values; characters that XML 1.0 does
/// not allow are dropped.
fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            '\n' | '\r' | '\t' => out.push(' '),
            _ if character.is_control() || matches!(character, '\u{fffe}' | '\u{ffff}') => {}
            _ => out.push(character),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::chart::LabelStyle;

    #[test]
    fn roles_become_classes_and_text_is_escaped() {
        let mut drawing = Drawing::new(100.0, 50.5, "a \"b\" <c>");
        drawing.label(
            Point::new(1.0, 2.25),
            "x < y & z\0",
            LabelStyle::plain(Anchor::End),
        );
        drawing.line(
            Point::new(0.0, 0.0),
            Point::new(f32::NAN, 5.0),
            Stroke::dashed(Role::Limit, 1.0),
        );
        let svg = drawing.to_svg();
        assert!(
            svg.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 100 50.5\"")
        );
        assert!(svg.contains("aria-label=\"a &quot;b&quot; &lt;c&gt;\""));
        assert!(svg.contains("class=\"word-label\">x &lt; y &amp; z</text>"));
        assert!(svg.contains("<polyline points=\"0,0 0,5\" class=\"line-limit\""));
        assert!(!svg.contains('#') || svg.contains("&#39;"));
    }
}
