package drawwell.ui

import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.Runnable
import kotlin.coroutines.CoroutineContext

/** A thread that does what it was given only when it is told to. */
internal class BusyThread : CoroutineDispatcher() {
    private val given = ArrayDeque<Runnable>()

    val waits get() = given.isNotEmpty()

    override fun dispatch(context: CoroutineContext, block: Runnable) {
        given += block
    }

    fun works() {
        while (given.isNotEmpty()) given.removeFirst().run()
    }
}
