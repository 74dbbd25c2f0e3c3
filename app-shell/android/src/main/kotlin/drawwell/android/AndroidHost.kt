package drawwell.android

import android.content.Context
import android.content.Intent
import android.net.Uri
import android.os.Build
import android.os.VibrationEffect
import android.os.Vibrator
import android.provider.Settings
import drawwell.surface.Appearance
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.ui.Host
import drawwell.ui.OpenRecord
import drawwell.ui.look.KeptLook
import drawwell.ui.look.Typefaces
import kotlinx.coroutines.CoroutineDispatcher

/** What a phone can do for the shell. It outlives the activity that is in front, if any is. */
internal class AndroidHost(private val context: Context, private val home: Home) : Host {
    private val alarms = Alarms(context)
    private val handedOver = HandingOver(context)
    private val notifications = Notifications(context)
    private val leave = LeaveToNotify(context)
    private val contrast = Contrast(context)
    private val look = context.filesDir.resolve("look").let { file -> KeptLook(file::readText, file::writeText) }
    private var front: MainActivity? = null
    private var screenOn = false

    override val typefaces: Typefaces = AndroidTypefaces.load(context.assets)

    override val reducedMotion: Boolean
        get() = Settings.Global.getFloat(context.contentResolver, Settings.Global.ANIMATOR_DURATION_SCALE, 1f) == 0f

    override val higherContrast: Boolean get() = contrast.higher

    override val lastLook: Appearance? get() = look.look

    override fun keepLook(look: Appearance) {
        this.look.keep(look)
        FirstFrame.announce(context, look.palette)
    }

    override val recordThread: CoroutineDispatcher get() = home.recordThread

    fun comesToFront(activity: MainActivity) {
        front = activity
        activity.keepScreenOn(screenOn)
    }

    fun leavesFront(activity: MainActivity) {
        if (front === activity) front = null
    }

    override fun openOwnRecord(): OpenRecord = home.records.own()

    override fun keepKey(key: ByteArray) = home.records.keepKey(key)

    override fun openLookAround(): OpenRecord = home.records.lookAround()

    override fun buzz() {
        val vibrator = context.getSystemService(Vibrator::class.java)
        if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.Q) {
            vibrator.vibrate(VibrationEffect.createPredefined(VibrationEffect.EFFECT_TICK))
        } else {
            vibrator.vibrate(VibrationEffect.createOneShot(TOUCH, VibrationEffect.DEFAULT_AMPLITUDE))
        }
    }

    override fun keepScreenOn(on: Boolean) {
        screenOn = on
        front?.keepScreenOn(on)
    }

    /** What the person was not asked for yet is not refused. */
    override val alarmsAre: Event.AlarmsAre
        get() = Event.AlarmsAre(alarms.mayBeExact, notifications.areOn() || leave.isOpen())

    override fun setAlarm(alarm: Effect.SetAlarm) {
        alarms.set(alarm)
        front?.askToNotify(leave)
    }

    /** Here the person sees what became of it, so what it said is taken back too. */
    override fun clearAlarm(key: String) {
        alarms.clear(key)
        notifications.takeBack(key)
    }

    /** The phone's own dialler, with the number in it; it takes no permission, since the person dials. */
    override fun dial(number: String) {
        val dialler = Intent(Intent.ACTION_DIAL, Uri.fromParts("tel", number, null))
        runCatching { front?.startActivity(dialler) }
    }

    override suspend fun handOver(fileName: String, contentType: String, write: suspend (path: String) -> Unit) {
        val file = handedOver.place(fileName)
        write(file.path)
        if (file.exists()) front?.startActivity(handedOver.sharing(file, contentType))
    }

    override fun forgetFiles() {
        handedOver.empty()
        Received(context).empty()
    }

    /** The answer comes to whichever activity is there by then, and from it to the conversation. */
    override suspend fun pickFile(contentTypes: List<String>): String? {
        front?.pick(contentTypes)
        return null
    }

    private companion object {
        /** As short as a motor can, in milliseconds, where the phone knows no touch of its own. */
        const val TOUCH = 20L
    }
}
