package drawwell.android

import android.app.AlarmManager
import android.app.NotificationManager
import android.content.Intent
import androidx.compose.ui.test.junit4.ComposeTestRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.test.core.app.ActivityScenario
import androidx.test.platform.app.InstrumentationRegistry
import drawwell.surface.Effect
import drawwell.surface.Event
import drawwell.surface.Place
import drawwell.surface.Screen
import drawwell.ui.Conversation
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Dispatchers
import org.robolectric.RuntimeEnvironment
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowAlarmManager

/** The app itself, in its own activity, on the real core; its clock stands until it is moved. */
internal class Phone(private val rule: ComposeTestRule) {
    val app = RuntimeEnvironment.getApplication() as App
    val alarms: ShadowAlarmManager = shadowOf(app.getSystemService(AlarmManager::class.java))
    val notifications = shadowOf(app.getSystemService(NotificationManager::class.java))
    lateinit var scenario: ActivityScenario<MainActivity>
    private var milliseconds = 1_780_000_000_000L

    val conversation: Conversation get() = app.home.conversation
    val screen: Screen get() = checkNotNull(conversation.screen) { "nothing is shown: ${conversation.trouble}" }

    init {
        processDies()
    }

    /** All that a process knows is gone, the files stay. What comes next is answered on the thread that asks. */
    fun processDies(recordThread: CoroutineDispatcher = Dispatchers.Unconfined) {
        app.home = Home(app, { milliseconds }, recordThread)
    }

    fun open(intent: Intent = Intent(app, MainActivity::class.java)) {
        scenario = ActivityScenario.launch(intent)
        settle()
    }

    /** Another app hands something to the activity that is there. */
    fun receives(intent: Intent) = activity {
        InstrumentationRegistry.getInstrumentation().callActivityOnNewIntent(it, intent)
    }

    fun begin() {
        open()
        say(Event.SetUp("welcomed", "true"))
    }

    fun pass(seconds: Int) {
        milliseconds += seconds * 1000L
    }

    fun say(event: Event) {
        conversation.send(event)
        settle()
    }

    fun tap(key: String) {
        rule.onNodeWithTag(key).performClick()
        settle()
    }

    fun settle() = rule.waitForIdle()

    /** Waits for what is done on another thread. */
    fun until(holds: () -> Boolean) {
        val end = System.nanoTime() + PATIENCE
        while (!holds()) {
            check(System.nanoTime() < end) { "it never came to be" }
            Thread.sleep(10)
            shadowOf(android.os.Looper.getMainLooper()).idle()
            settle()
        }
    }

    fun again() {
        scenario.recreate()
        settle()
    }

    /** The alarm that the core asks for now, if it asks for one. */
    fun asked(): Effect.SetAlarm? {
        val record = app.home.records.own()
        return record.core.update(Event.Wake, record.now()).effects.filterIsInstance<Effect.SetAlarm>().singleOrNull()
    }

    /** All reminders that the core asks for now. */
    fun reminders(): List<Effect.SetAlarm> = app.home.records.own().let { record ->
        record.core.update(Event.Wake, record.now()).effects.filterIsInstance<Effect.SetAlarm>()
    }

    /** So many sessions a day, and a sound for the next one. */
    fun plans() {
        say(Event.Enter("rhythm", "sessions_a_day", "8"))
        say(Event.Enter("rhythm", "reminders", "sound"))
    }

    /** What Tonight asks and says, with a plan. */
    fun asksTonight(): List<String> {
        if (screenAt(Place.Tonight).tonight.night == null) say(Event.Enter("rhythm", "sessions_a_day", "8"))
        return screenAt(Place.Tonight).tonight.asks.map { it.key }
    }

    private fun screenAt(place: Place): Screen.Tonight = app.home.records.own().let { it.core.show(place, it.now()) as Screen.Tonight }

    fun passTo(unixMilliseconds: Long) {
        milliseconds = unixMilliseconds
    }

    fun activity(look: (MainActivity) -> Unit) {
        scenario.onActivity { look(it) }
        settle()
    }

    private companion object {
        const val PATIENCE = 10_000_000_000L
    }
}
