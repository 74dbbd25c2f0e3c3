package drawwell.android

import android.content.Context
import android.text.format.DateFormat
import drawwell.surface.Clock
import drawwell.surface.Drawwell
import drawwell.surface.Event
import drawwell.surface.Opening
import drawwell.surface.Place
import drawwell.surface.uniffiEnsureInitialized
import drawwell.ui.OpenRecord
import java.io.File
import java.time.Instant
import java.time.ZoneId
import java.time.ZonedDateTime
import java.util.Locale

/** The records on this phone. All but `speaksAnother` is called on the record's thread. */
internal class Records(private val context: Context, private val now: () -> Long) {
    private val device = Device(context.filesDir)
    private val keys = WrappedKey(context.filesDir.resolve("record.key"))

    @Volatile
    private var language: String? = null
    private var own: OpenRecord? = null

    /** The person's own: one in a process, so that the activity and the receivers write to the same. */
    fun own(): OpenRecord {
        val spoken = spoken()
        own?.takeIf { language == spoken }?.let { return it }
        own?.close()
        own = null
        val file = context.filesDir.resolve("record.drawwell")
        // A library of another build is found out here, before anything is read as what it is not.
        uniffiEnsureInitialized()
        val opening = Opening(device.name(), spoken, lookAround = false)
        val core = Drawwell.open(file.path, opening, here(), keys.keyFor(file.path))
        language = spoken
        return OpenRecord(core, ::here).also { own = it }
    }

    /** The language and region of the phone, with the hours that it is set to. */
    private fun spoken(): String = Locale.Builder().setLocale(Locale.getDefault(Locale.Category.FORMAT))
        .setUnicodeLocaleKeyword("hc", if (DateFormat.is24HourFormat(context)) "h23" else "h12")
        .build().toLanguageTag()

    fun keepKey(key: ByteArray) {
        keys.keep(key)
    }

    fun speaksAnother(): Boolean = language.let { it != null && it != spoken() }

    /** The invented family, brought into a fresh record at the moment it was made for. */
    fun lookAround(): OpenRecord {
        val folder = context.cacheDir.resolve("look-around").apply { deleteRecursively(); mkdirs() }
        val moment = ZonedDateTime.parse(bundled("family.clock").decodeToString().trim())
        val ahead = moment.toInstant().toEpochMilli() - now()
        val clock = { Clock(now() + ahead, moment.zone.id) }
        val family = folder.resolve("family.jsonl").apply { writeBytes(bundled("family.jsonl")) }
        val opening = Opening("lookaround", spoken(), lookAround = true)
        val core = Drawwell.open(folder.resolve("record.drawwell").path, opening, clock())
        core.importFile(family.path, clock())
        core.update(Event.Go(Place.Now), clock())
        return OpenRecord(core, clock)
    }

    /** With the phone's own offset: its zone data are the system's, and what its clock shows is what is read. */
    private fun here(): Clock {
        val (at, zone) = Instant.ofEpochMilli(now()) to ZoneId.systemDefault()
        return Clock(at.toEpochMilli(), zone.id, zone.rules.getOffset(at).totalSeconds)
    }

    private fun bundled(name: String): ByteArray = context.assets.open("drawwell/demo/$name").use { it.readBytes() }

    private fun OpenRecord.close() = (core as AutoCloseable).close()
}

/**
 * The name that a version before gave this phone; none otherwise, and the core names it after its key. It is of the
 * record that lies here: where that is gone, a new one would give out the numbers of the old again.
 */
internal class Device(private val folder: File) {
    fun name(): String =
        folder.resolve("device").takeIf { it.exists() && folder.resolve("record.drawwell").exists() }?.readText().orEmpty()
}
