package drawwell.desktop.pictures

import drawwell.surface.Clock
import drawwell.surface.Drawwell
import drawwell.surface.DrawwellInterface
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Opening
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.surface.Secret
import drawwell.surface.Trouble
import drawwell.ui.Told
import drawwell.ui.frame
import java.io.File

/** The way through Visit on the own record: signs and cautions, a consultant, the record sealed for her, her plan, and erasing. */
internal class VisitWalk(
    private val core: DrawwellInterface,
    private val now: () -> Clock,
    private val keep: (String, Screen, Told?) -> Unit,
) {
    fun through(folder: File) {
        SomeConsultant(folder.resolve("desk").apply { mkdirs() }, now).use { consultant ->
            keep("visit-first", go(Place.Visit))
            val card = consultant.card()
            sharing(card)
            plan(consultant, folder)
        }
        passphrase(folder)
        cautions()
        keep("erasing", go(Place.Erasing))
        keep("recovery", go(Place.Recovery))
        keep("recovery-code", does(Event.SealWithCode))
        locked(folder)
    }

    private fun sharing(card: String) {
        val page = go(Place.Sharing)
        keep("visit-sharing", page)
        refused("visit-sharing-trouble", page, Event.Enter("card", "card", card.dropLast(9)))
        keep("tables", go(Place.Tables))
        keep("visit-card", does(Event.Enter("card", "card", card)))
        keep("visit-consultant", does(Event.TakeWaiting))
    }

    private fun plan(consultant: SomeConsultant, folder: File) {
        val share = (here() as Screen.Findings).findings.actions.single { it.key == "share-with" }
        val shared = out(share.event, folder)
        keep("visit-shared", here())
        val plan = core.importFile(consultant.answers(shared).path, now()).screen as Screen.Findings
        keep("visit-plan", plan)
        keep("now-plan", go(Place.Now))
        keep("visit-plan-waits", go(Place.Visit))
        does((go(Place.Visit) as Screen.List).list.groups.single { it.key == "plans" }.rows.single().open!!.event)
        val (first, second) = plan.findings.sections
        does(first.actions.first().event)
        does(second.actions.last().event)
        keep("visit-plan-answered", does(plan.findings.sections.last().actions.first().event))
    }

    private fun passphrase(folder: File) {
        go(Place.Sharing)
        val sealed = out(Event.EnterSecret("seal-passphrase", Secret("otter plum kite anchor")), folder)
        val page = core.importFile(sealed.path, now()).screen
        keep("visit-sealed", page)
        refused("visit-sealed-trouble", page, Event.EnterSecret("open-passphrase", Secret("otter plum kite ancho")))
    }

    /** A record whose key is not there. */
    private fun locked(folder: File) {
        val path = folder.resolve("locked.drawwell").path
        val opening = Opening("pictures", "en", lookAround = false)
        Drawwell.open(path, opening, now()).use { it.update(Event.SealWithCode, now()) }
        Drawwell.open(path, opening, now()).use { keep("recovery-locked", it.here(now()), null) }
    }

    private fun cautions() {
        go(Place.Now)
        val sign = does(Event.Add("sign", 0u)) as Screen.Form
        keep("sign", sign)
        val id = sign.form.id
        does(Event.Enter(id, "temperature", "38.7"))
        keep("sign-filled", does(Event.Enter(id, "redness", "left")))
        keep("now-caution", go(Place.Now))
        keep("day-caution", go(Place.Day(0u)))
        keep("tonight-caution", go(Place.Tonight))
        keep("supply-caution", go(Place.Supply(28u)))
        keep("visit-caution", go(Place.Visit))
        keep("caution", does(caution(here())))
        does(Event.Enter(id, "pus", "left"))
        does(Event.Enter(id, "shivering", "true"))
        keep("now-cautions", go(Place.Now))
        keep("cautions", does(caution(here())))
        does(Event.Start)
        go(Place.Now)
        keep("running-cautions", here())
        does(Event.Enter(id, "fainting", "true"))
        keep("running-emergency", go(Place.Now))
        does(Event.AmountsLater((does(Event.Finish) as Screen.Amounts).amounts.session))
        val first = ((does(caution(go(Place.Now))) as Screen.List).list.groups.first().rows.first().open)
        keep("caution-emergency", does(checkNotNull(first).event))
        does(Event.Enter("settings", "emergency_call", "112"))
        keep("caution-emergency-call", go(Place.Caution("emergency")))
        keep("now-emergency-call", go(Place.Now))
        keep("caution-dealt", does(Event.CautionDealt("pus", "doctor_or_midwife")))
        keep("cautions-earlier", go(Place.Cautions))
    }

    private fun caution(screen: Screen) = screen.frame().notices.single { it.key == "caution" }.actions.single().event

    private fun out(event: Event, folder: File): File {
        val goes = core.update(event, now()).effects.filterIsInstance<Effect.HandOver>().single()
        return folder.resolve(goes.fileName).also { core.export(goes.what, it.path, now()) }
    }

    private fun refused(name: String, page: Screen, event: Event) = try {
        does(event)
        error("$name: it was taken")
    } catch (trouble: Trouble) {
        keep(name, page, Told.of(trouble))
    }

    private fun go(place: Place) = does(Event.Go(place))

    private fun here() = core.here(now())

    private fun does(event: Event): Screen = core.update(event, now()).screen

    private fun keep(name: String, screen: Screen) = keep(name, screen, null)
}
