//! Events of plans: one that comes, its parts accepted or left, and on a desk one that goes.

use serde_json::{json, Value};

use super::state::{buzz, App, Present};
use crate::journal::Writing;
use crate::limits;
use crate::record::plan_part::{part_before, OF_RHYTHM, OF_TRIAL};
use crate::record::{check, moment, text, whole_number, Fields, Kind, RHYTHM, RULES, SETTINGS};
use crate::screen::shapes::{Effect, Place};
use crate::share::plan::{self, Addressee, ReadPlan};
use crate::share::sealed::signed;
use crate::share::sealed::spoken::is_compared;
use crate::trouble::{Detail, Kind as TroubleKind, Trouble};

fn missing() -> Trouble {
    Trouble::new(TroubleKind::Missing, "trouble-no-such-record")
}

impl App {
    /// Takes in a signed plan and opens it; nothing in it holds before it is accepted. A later
    /// one of the same plan takes the place of what was not answered and asks again about what
    /// was and is another now.
    pub(super) fn import_plan(&mut self, signed_text: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let (text_of_plan, key, name) = self.text_of_a_consultant(signed_text)?;
        let mut read = plan::read(text_of_plan)?;
        let settings = self.journal()?.record(SETTINGS)?.map(|(_, fields)| fields).unwrap_or_default();
        if text(&settings, "family") != Some(read.family.as_str()) {
            return Err(Trouble::bad("", "plan-for-another"));
        }
        let view = self.view(present)?;
        if read.made.instant().since(present.now) > limits::AHEAD {
            return Err(Trouble::bad("", "plan-ahead"));
        }
        if let Some(until) = read.good_until.filter(|until| until.days_since(view.today()) < 0) {
            return Err(Trouble::bad("", "plan-out-of-date").with("date", Detail::Date(until.date())));
        }
        // From whom it is, her card says and not her plan.
        read.plan.1.insert("plan_from".to_owned(), json!(name));
        read.plan.1.insert("revision".to_owned(), json!(read.revision));
        match self.journal()?.record(&read.plan.0)? {
            Some((_, there)) => {
                if text(&there, "signing_key") != Some(key.as_str()) {
                    return Err(Trouble::bad("", "plan-other-content"));
                }
                match read.revision.cmp(&u64::from(whole_number(&there, "revision").unwrap_or(1))) {
                    std::cmp::Ordering::Less => return Err(Trouble::bad("", "plan-older")),
                    std::cmp::Ordering::Equal => self.is_the_same(&read)?,
                    std::cmp::Ordering::Greater => self.keep_plan(&read, &key, present)?,
                }
            }
            None => {
                self.not_older(&read, &key, present)?;
                self.keep_plan(&read, &key, present)?;
            }
        }
        self.go(Place::Plan { id: read.plan.0 });
        Ok(vec![buzz("plan-in")])
    }

    /// The text of a plan, the key it is signed with, and the name on the card of that key. Only
    /// of a consultant whose words were compared.
    fn text_of_a_consultant<'t>(&self, signed_text: &'t str) -> Result<(&'t str, String, String), Trouble> {
        let (mut compared, mut others) = (Vec::new(), Vec::new());
        for row in self.journal()?.of_kind(Kind::Consultant)? {
            let fields = self.journal()?.record(&row.subject)?.map(|(_, fields)| fields).unwrap_or_default();
            let Some(key) = text(&fields, "signing_key").map(str::to_owned) else { continue };
            let name = text(&fields, "name").unwrap_or_default().to_owned();
            if is_compared(&fields) {
                compared.push((key, name))
            } else {
                others.push(key)
            }
        }
        let keys: Vec<String> = compared.iter().map(|(key, _)| key.clone()).collect();
        match signed::verify(signed_text, &keys) {
            Ok((text, key)) => {
                let name = compared.iter().find(|(known, _)| known == key).map(|(_, name)| name.clone());
                Ok((text, key.to_owned(), name.unwrap_or_default()))
            }
            Err(_) if signed::verify(signed_text, &others).is_ok() => Err(Trouble::bad("", "plan-not-compared")),
            Err(why) => Err(why),
        }
    }

    /// A plan from before one that is in already is no longer what she proposes. One that is
    /// dated far ahead of now was never to be believed.
    fn not_older(&self, read: &ReadPlan, key: &str, present: Present) -> Result<(), Trouble> {
        for row in self.journal()?.of_kind(Kind::Plan)? {
            let fields = self.journal()?.record(&row.subject)?.map(|(_, fields)| fields).unwrap_or_default();
            let later = moment(&fields, "at").is_some_and(|at| {
                at.instant() > read.made.instant() && at.instant().since(present.now) <= limits::AHEAD
            });
            if later && text(&fields, "signing_key") == Some(key) {
                return Err(Trouble::bad("", "plan-older"));
            }
        }
        Ok(())
    }

    /// The same plan twice says nothing new; under the same number with other content, one of
    /// the two is not what it says.
    fn is_the_same(&self, read: &ReadPlan) -> Result<(), Trouble> {
        let there = crate::gather::plan::parts_of_plan(self.journal()?, &read.plan.0)?;
        let plan = self.journal()?.record(&read.plan.0)?.map(|(_, fields)| fields).unwrap_or_default();
        let says = |key: &str| plan.get(key) == read.plan.1.get(key);
        let same = ["at", "good_until", "plan_words"].into_iter().all(says)
            && there.len() == read.parts.len()
            && there
                .iter()
                .zip(&read.parts)
                .all(|((id, part), (new_id, new))| id == new_id && says_the_same(part, new));
        match same {
            true => Ok(()),
            false => Err(Trouble::bad("", "plan-other-content")),
        }
    }

    fn keep_plan(&mut self, read: &ReadPlan, key: &str, present: Present) -> Result<(), Trouble> {
        let came = self.read(present)?.present();
        let there = crate::gather::plan::parts_of_plan(self.journal()?, &read.plan.0)?;
        self.journal_mut()?.act("plan-in", "", present.now, |w| {
            let (id, fields) = &read.plan;
            put(w, id, Kind::Plan, fields)?;
            w.set(id, "signing_key", &json!(key))?;
            w.set(id, "came", &came.to_json())?;
            for (id, fields) in &read.parts {
                let before = there.iter().find(|(known, _)| known == id).map(|(_, part)| part);
                if before.is_some_and(|part| says_the_same(part, fields)) {
                    continue;
                }
                // What was answered before stays to be read beside what it is now.
                if let Some(answered) = before.filter(|part| part.contains_key("answer")) {
                    let mut kept = answered.clone();
                    kept.insert("plan".to_owned(), json!(plan_before(&read.plan.0)));
                    put(w, &part_before(id), Kind::PlanPart, &kept)?;
                }
                put(w, id, Kind::PlanPart, fields)?;
            }
            let gone = |id: &String| !read.parts.iter().any(|(new, _)| new == id);
            for (id, _) in there.iter().filter(|(id, _)| gone(id)) {
                w.set(id, "taken_out", &json!(true))?;
            }
            Ok(())
        })
    }

    /// Accepts a part of a plan, or leaves it. What it sets is set in the same act.
    pub(super) fn plan_answer(&mut self, part: &str, accept: bool, present: Present) -> Result<Vec<Effect>, Trouble> {
        let sets = self.plan_part_sets(part, accept)?;
        self.answer_parts(&[(part.to_owned(), sets)], accept, present)
    }

    /// Accepts every part of a plan that was not answered, or none where one can't be.
    pub(super) fn plan_accept_all(&mut self, plan: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let mut parts = Vec::new();
        for (id, fields) in crate::gather::plan::parts_of_plan(self.journal()?, plan)? {
            if text(&fields, "answer").is_none() {
                parts.push((id.clone(), self.plan_part_sets(&id, true)?));
            }
        }
        self.answer_parts(&parts, true, present)
    }

    fn answer_parts(
        &mut self,
        parts: &[(String, Vec<Sets>)],
        accept: bool,
        present: Present,
    ) -> Result<Vec<Effect>, Trouble> {
        let at = self.read(present)?.present().to_json();
        let name = if accept { "plan-accepted" } else { "plan-left" };
        self.journal_mut()?.act(name, "", present.now, |w| {
            for (part, sets) in parts {
                for set in sets {
                    w.set(&set.subject, "kind", &json!(set.kind.name()))?;
                    w.set(&set.subject, set.field, &set.value)?;
                }
                w.set(part, "answer", &json!(if accept { "accepted" } else { "left" }))?;
                w.set(part, "answered", &at)?;
            }
            Ok(())
        })?;
        let mut effects = self.reminder_effects(present)?;
        effects.push(buzz(name));
        Ok(effects)
    }

    /// What accepting a part sets, checked against what stands.
    fn plan_part_sets(&self, part: &str, accept: bool) -> Result<Vec<Sets>, Trouble> {
        let (kind, fields) = self.journal()?.record(part)?.ok_or_else(missing)?;
        if kind != Kind::PlanPart {
            return Err(missing());
        }
        let sets = if accept { sets(part, &fields) } else { Vec::new() };
        if sets.iter().any(|set| set.kind == Kind::Rhythm) {
            let mut rhythm = self.journal()?.record(RHYTHM)?.map(|(_, fields)| fields).unwrap_or_default();
            rhythm.extend(sets.iter().map(|set| (set.field.to_owned(), set.value.clone())));
            check::whole_record(Kind::Rhythm, &rhythm, None, None)?;
        }
        for set in &sets {
            check::field(set.kind, set.field, &set.value)?;
        }
        Ok(sets)
    }

    /// Writes down that a plan was sent.
    pub(super) fn was_sent(&mut self, plan: &str, present: Present) -> Result<(), Trouble> {
        let at = self.read(present)?.present().to_json();
        let revision = self.next_revision(plan)?;
        self.journal_mut()?.quiet_act(present.now, |w| {
            w.set(plan, "sent", &at)?;
            w.set(plan, "revision", &json!(revision))
        })
    }

    /// How often a plan will have been sent with the next time. One that was sent before plans
    /// were counted was sent once.
    fn next_revision(&self, plan: &str) -> Result<u64, Trouble> {
        let fields = self.journal()?.record(plan)?.map(|(_, fields)| fields).unwrap_or_default();
        let sent = whole_number(&fields, "revision").map(u64::from);
        Ok(sent.unwrap_or(u64::from(fields.contains_key("sent"))) + 1)
    }

    /// A plan's file, sealed for its family.
    pub(super) fn plan_file(&mut self, plan: &str, present: Present) -> Result<Vec<u8>, Trouble> {
        let (kind, fields) = self.journal()?.record(plan)?.ok_or_else(missing)?;
        let family = text(&fields, "plan_for").filter(|_| kind == Kind::Plan).ok_or_else(missing)?.to_owned();
        let mut sealing_keys: Vec<String> = Vec::new();
        for row in self.journal()?.of_kind(Kind::CaseFamily)? {
            let case = self.journal()?.record(&row.subject)?.map(|(_, fields)| fields).unwrap_or_default();
            if text(&case, "family") == Some(family.as_str()) {
                // Every phone of the family; one of before said only its own.
                let keys = text(&case, "sealing_keys").or(text(&case, "sealing_key")).unwrap_or_default();
                sealing_keys = keys.split_whitespace().map(str::to_owned).collect();
            }
        }
        if sealing_keys.is_empty() {
            return Err(Trouble::bad("sealing_key", "plan-no-key"));
        }
        let from = self.own_card()?.name;
        let parts: Vec<Fields> =
            crate::gather::plan::parts_of_plan(self.journal()?, plan)?.into_iter().map(|(_, fields)| fields).collect();
        let made = self.read(present)?.present();
        let keys = self.own_keys()?;
        let revision = self.next_revision(plan)?;
        plan::write(plan, &fields, &parts, &Addressee { family, sealing_keys, from, revision }, &keys, &made)
    }

    /// Adds a part to a plan on the desk, and opens it.
    pub(super) fn add_plan_part(&mut self, plan: &str, part: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        check::field(Kind::PlanPart, "plan_part", &json!(part))?;
        let (kind, fields) = self.journal()?.record(plan)?.ok_or_else(missing)?;
        if kind != Kind::Plan || fields.contains_key("came") {
            return Err(missing());
        }
        let id = self.journal_mut()?.act("add", "", present.now, |w| {
            let id = w.new_id();
            w.set(&id, "kind", &json!(Kind::PlanPart.name()))?;
            w.set(&id, "plan", &json!(plan))?;
            w.set(&id, "plan_part", &json!(part))?;
            Ok(id)
        })?;
        self.go(Place::Entry { id: id.clone() });
        if part == "rule" {
            self.go(Place::PlanRules { part: id });
        }
        Ok(vec![buzz("add")])
    }

    /// Says which rule a part of a plan sets anew, and leads back to the part. The value
    /// of another rule goes with it: it would mean something else.
    pub(super) fn choose_rule(&mut self, part: &str, rule: &str, present: Present) -> Result<Vec<Effect>, Trouble> {
        let (kind, fields) = self.journal()?.record(part)?.ok_or_else(missing)?;
        if kind != Kind::PlanPart {
            return Err(missing());
        }
        if text(&fields, "rule") != Some(rule) {
            let values = vec![("rule".to_owned(), json!(rule)), ("rule_value".to_owned(), Value::Null)];
            self.set_fields(part, kind, fields, values, "enter", present)?;
        }
        self.places.retain(|place| !matches!(place, Place::PlanRules { .. }));
        self.go(Place::Entry { id: part.to_owned() });
        Ok(vec![buzz("enter")])
    }
}

/// One field that accepting a part sets.
struct Sets {
    subject: String,
    kind: Kind,
    field: &'static str,
    value: Value,
}

fn sets(part: &str, fields: &Fields) -> Vec<Sets> {
    let one = |subject: &str, kind: Kind, field: &'static str, from: &str| {
        fields.get(from).map(|value| Sets { subject: subject.to_owned(), kind, field, value: value.clone() })
    };
    match text(fields, "plan_part") {
        Some("rhythm") => OF_RHYTHM.iter().filter_map(|field| one(RHYTHM, Kind::Rhythm, field, field)).collect(),
        Some("aim") => one(SETTINGS, Kind::Settings, "aim", "aim").into_iter().collect(),
        Some("trial") => {
            let trial = format!("trial-{part}");
            OF_TRIAL.iter().filter_map(|field| one(&trial, Kind::Trial, field, field)).collect()
        }
        // Named after the part, so that accepting it twice makes one visit.
        Some("visit") => one(&format!("visit-{part}"), Kind::Visit, "at", "visit_at").into_iter().collect(),
        Some("rule") => {
            let rule = text(fields, "rule").and_then(|key| Kind::Rules.field(key));
            rule.and_then(|rule| one(RULES, Kind::Rules, rule.key, "rule_value")).into_iter().collect()
        }
        _ => Vec::new(),
    }
}

/// Puts a record as it is said, and nothing of before.
fn put(w: &mut Writing<'_>, id: &str, kind: Kind, fields: &Fields) -> Result<(), Trouble> {
    w.set(id, "kind", &json!(kind.name()))?;
    let there = w.record(id)?.map(|(_, fields)| fields).unwrap_or_default();
    for field in there.keys().filter(|field| *field != "kind" && !fields.contains_key(*field)) {
        w.set(id, field, &Value::Null)?;
    }
    for (field, value) in fields {
        w.set(id, field, value)?;
    }
    Ok(())
}

/// Whether a part that is here says what one that came says; the answer to it is the parent's.
fn says_the_same(there: &Fields, new: &Fields) -> bool {
    let own = |key: &str| ["kind", "answer", "answered"].contains(&key);
    there.iter().filter(|(key, _)| !own(key)).eq(new.iter().filter(|(key, _)| !own(key)))
}

/// The plan that such a part is said to be of: none that is shown.
fn plan_before(plan: &str) -> String {
    format!("{plan}-before")
}
