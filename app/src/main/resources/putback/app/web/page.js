// Says what is ticked, and keeps an empty form from being sent. The pages work without it.
const form = document.getElementById('choose');
if (form) {
    const picked = document.getElementById('picked');
    const ticked = () => [...form.querySelectorAll('input[name=renew]:checked')];
    const say = () => {
        const names = ticked().map((box) => box.closest('label').textContent.trim());
        picked.textContent = names.length ? names.join(', ') : 'Nothing ticked yet.';
    };
    form.addEventListener('change', say);
    form.addEventListener('submit', (event) => {
        if (!ticked().length) {
            event.preventDefault();
            picked.textContent = 'Tick what is to be renewed first.';
            form.querySelector('input[name=renew]').focus();
        }
    });
    say();
}
