package drawwell.desktop.pictures

import drawwell.surface.Clock
import drawwell.surface.Drawwell
import drawwell.surface.DrawwellInterface
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Opening
import drawwell.surface.Part
import drawwell.surface.Screen
import drawwell.surface.Secret
import drawwell.ui.pictures.drawing
import java.io.File

/** A family that is invented, on a phone of its own: it writes down, and shares with a consultant. */
internal class SomeFamily(private val folder: File, val name: String, private var milliseconds: Long, private val zone: String) : AutoCloseable {
    private val core: DrawwellInterface

    init {
        folder.mkdirs()
        core = Drawwell.open(folder.resolve("record.drawwell").path, Opening("phone" + name.filter(Char::isLetter).lowercase(), "en", false), now())
        does(Event.SetUp("welcomed", "true"))
        does(Event.Enter("settings", "sheet_name", name))
    }

    fun now() = Clock(milliseconds, zone)

    fun pass(hours: Double) {
        milliseconds += (hours * 3_600_000).toLong()
    }

    /** Nothing more is written down until then. */
    fun until(clock: Clock) {
        milliseconds = clock.unixMilliseconds
    }

    fun does(event: Event): Screen = core.update(event, now()).screen

    fun bringsIn(facts: String) {
        val file = folder.resolve("facts.jsonl").apply { writeText(facts) }
        core.importFile(file.path, now())
    }

    /** Sessions at their usual distance. */
    fun expresses(times: Int, left: Float, right: Float) = repeat(times) {
        pass(USUAL)
        does(Event.Start)
        pass(0.3)
        val amounts = does(Event.Finish)
        does(amounts.drawing(Part.LEFT, left))
        does(amounts.drawing(Part.RIGHT, right))
        does(Event.AmountsDone((amounts as Screen.Amounts).amounts.session))
    }

    /** A sign in two taps. */
    fun notices(key: String) {
        val form = (does(Event.Add("sign", 0u)) as Screen.Form).form
        does(form.groups.flatMap { it.rows }.flatMap { it.options }.single { it.key == key }.event)
    }

    /** The record, sealed for the consultant whose card this is. */
    fun shares(card: String): File {
        does(Event.TakeCardIn(card))
        val consultant = does(Event.TakeWaiting) as Screen.Findings
        return out(consultant.findings.actions.single { it.key == "share-with" }.event)
    }

    /** The record, sealed with a passphrase. */
    fun seals(passphrase: String): File = out(Event.EnterSecret("seal-passphrase", Secret(passphrase)))

    private fun out(asked: Event): File {
        val goes = core.update(asked, now()).effects.filterIsInstance<Effect.HandOver>().single()
        val file = folder.resolve(goes.fileName)
        core.export(goes.what, file.path, now())
        return file
    }

    override fun close() = (core as AutoCloseable).close()

    private companion object {
        const val USUAL = 2.7
    }
}
