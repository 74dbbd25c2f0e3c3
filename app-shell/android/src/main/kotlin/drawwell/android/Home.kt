package drawwell.android

import android.content.Context
import drawwell.ui.Conversation
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.SupervisorJob
import kotlinx.coroutines.asCoroutineDispatcher
import java.util.concurrent.Executors

/** What a process has one of: the record's thread, the record, the host, and the conversation about them. */
internal class Home(
    context: Context,
    now: () -> Long = System::currentTimeMillis,
    val recordThread: CoroutineDispatcher = Executors.newSingleThreadExecutor { Thread(it, "drawwell-record") }.asCoroutineDispatcher(),
) {
    /** For what is asked of the record while no one looks. */
    val behind = CoroutineScope(SupervisorJob() + recordThread)
    val records = Records(context, now)
    val host = AndroidHost(context, this)
    val conversation = Conversation(host)

    /** A record is opened in a language; in another it is opened again. */
    fun lookAtLanguage() {
        if (records.speaksAnother()) conversation.openAnew()
    }
}
