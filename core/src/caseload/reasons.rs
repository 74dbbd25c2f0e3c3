//! The reasons why a family needs a look, with what only words of its own record can say.

use crate::answer::caution::Caution;
use crate::gather::caution::urgent_since;
use crate::gather::kit::below_its_range;
use crate::gather::reasons::{gap, Reason};
use crate::guidance::CaseloadRules;
use crate::record::Kind;
use crate::screen::{caution_became, caution_title, View};
use crate::time::Span;
use crate::trouble::Trouble;

/// What was urgent and is over is told for so long.
const TELLS_BACK: Span = Span::hours(14 * 24);

/// The reasons within a family's record, as of the view.
pub(super) fn of(view: &View<'_>, rules: &CaseloadRules) -> Result<Vec<Reason>, Trouble> {
    let all = urgent_since(view, view.now.minus(TELLS_BACK))?;
    let over: Vec<Reason> =
        all.iter().filter(|c| !c.stands() && c.source.urgency_waits()).map(|c| was(view, c)).collect();
    let cautions: Vec<Caution> = all.into_iter().filter(Caution::stands).collect();
    let far: Vec<String> = cautions.iter().filter_map(|caution| caution.of.clone()).collect();
    let told = |caution: Caution| Reason::Caution { title: caution_title(view, &caution), caution };
    let mut reasons: Vec<Reason> = cautions.into_iter().map(told).collect();
    for (id, name) in view.named(Kind::Pump)? {
        if !far.contains(&id) && below_its_range(view, &id)? {
            reasons.push(Reason::PumpBelow { pump: name });
        }
    }
    reasons.extend(over);
    reasons.extend(gap(view, rules)?);
    Ok(reasons)
}

fn was(view: &View<'_>, caution: &Caution) -> Reason {
    Reason::Was { title: caution_title(view, caution), became: caution_became(view, caution) }
}
