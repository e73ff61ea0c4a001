//! Decimal digits to a number and back.
//!
//! The standard library does the same to the last bit for any number of digits, and brings tables
//! of powers for it that are a twentieth of all that the page transfers. Values here have far fewer
//! digits than the fifteen that these few lines read and write exactly.

/// Reads `53`, `2.5`, `.5`, `-1e3`: up to 15 digits exactly, more to the last place of the number.
/// Too large a number is infinite. `None` where it is no number.
pub fn parse(text: &str) -> Option<f64> {
    let (negative, digits) = sign(text);
    let (digits, exponent) = match digits.find(['e', 'E']) {
        Some(at) => (digits.get(..at)?, whole_exponent(digits.get(at + 1..)?)?),
        None => (digits, 0),
    };
    let (whole, fraction) = digits.split_once('.').unwrap_or((digits, ""));
    if whole.is_empty() && fraction.is_empty() {
        return None;
    }
    let mut mantissa: u64 = 0;
    let mut power = exponent;
    for (place, digit) in whole.bytes().chain(fraction.bytes()).enumerate() {
        if !digit.is_ascii_digit() {
            return None;
        }
        let behind_point = place >= whole.len();
        if mantissa < 1_000_000_000_000_000_000 {
            mantissa = mantissa * 10 + u64::from(digit - b'0');
            power = power.saturating_sub(i32::from(behind_point));
        } else {
            // Digits beyond the eighteenth say nothing that a number could hold.
            power = power.saturating_add(i32::from(!behind_point));
        }
    }
    let number = scaled(mantissa as f64, power);
    Some(if negative { -number } else { number })
}

/// Writes a number with so many decimals, the last one rounded to the nearest; beyond 18 digits
/// with a power of ten.
pub fn fixed(number: f64, decimals: u8) -> String {
    if !number.is_finite() {
        return if number.is_nan() { "no number".to_owned() } else { "beyond any number".to_owned() };
    }
    let sign = if number.is_sign_negative() { "-" } else { "" };
    let size = number.abs();
    let places = usize::from(decimals);
    let units = (size * 10f64.powi(i32::from(decimals))).round();
    // Below 10^18 the conversion is exact; the digits come from the last to the first.
    let mut digits = [b'0'; 19];
    if units < 1e18 && places < digits.len() {
        let mut rest = units as u64;
        let mut count = 0;
        for digit in &mut digits {
            *digit += (rest % 10) as u8;
            rest /= 10;
            count += 1;
            if rest == 0 && count > places {
                break;
            }
        }
        let mut text = String::with_capacity(sign.len() + count + 1);
        text.push_str(sign);
        for (place, digit) in digits.iter().enumerate().take(count).rev() {
            text.push(char::from(*digit));
            if place == places && place > 0 {
                text.push('.');
            }
        }
        return text;
    }
    if size >= 1e18 {
        let power = size.log10().floor() as i32;
        return format!("{sign}{}e{power}", fixed(scaled(size, -power), 3));
    }
    fixed(number, decimals - 1)
}

/// Writes a number with as many decimals as it needs to be read back as the same number.
pub fn shortest(number: f64) -> String {
    let same = |text: &String| parse(text).is_some_and(|read| read == number);
    (0..=17).map(|decimals| fixed(number, decimals)).find(same).unwrap_or_else(|| fixed(number, 17))
}

fn sign(text: &str) -> (bool, &str) {
    match text.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    }
}

fn whole_exponent(text: &str) -> Option<i32> {
    let (negative, digits) = sign(text);
    if digits.is_empty() || !digits.bytes().all(|digit| digit.is_ascii_digit()) {
        return None;
    }
    // More than five digits are beyond any number anyhow.
    let size = digits.bytes().fold(0i32, |sum, digit| (sum * 10 + i32::from(digit - b'0')).min(99_999));
    Some(if negative { -size } else { size })
}

/// `number × 10^power`. Powers up to 22 are exact, so that one step of them rounds once.
fn scaled(mut number: f64, mut power: i32) -> f64 {
    while power < 0 && number != 0.0 {
        let step = power.max(-22);
        number /= 10f64.powi(-step);
        power -= step;
    }
    while power > 0 && number.is_finite() && number != 0.0 {
        let step = power.min(22);
        number *= 10f64.powi(step);
        power -= step;
    }
    number
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_number_is_not_read() {
        for text in ["", ".", "-", "e5", "1e", "1e+", "1.2.3", "five", "inf", "NaN", "1 000", "0x10", "1e5.0"]
        {
            assert_eq!(parse(text), None, "{text}");
        }
        assert_eq!(parse("1e400"), Some(f64::INFINITY));
        assert_eq!(parse("1e-999999999"), Some(0.0));
    }

    #[test]
    fn numbers_are_written_with_the_decimals_asked_for() {
        assert_eq!(fixed(0.0, 0), "0");
        assert_eq!(fixed(-0.04, 1), "-0.0");
        assert_eq!(fixed(353.35, 1), "353.4");
        assert_eq!(fixed(0.000_197, 5), "0.00020");
        assert_eq!(fixed(1e17, 3), "100000000000000000");
        assert_eq!(fixed(1.5e300, 2), "1.500e300");
        assert_eq!(shortest(1.125), "1.125");
        assert_eq!(shortest(1200.0), "1200");
        assert_eq!(shortest(-0.1), "-0.1");
    }
}
