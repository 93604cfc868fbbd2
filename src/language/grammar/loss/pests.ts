/** What eats, tramples or digs up cuttings: small fry, beasts, birds, and those of the house. */
export const PESTS: readonly string[] = [
  'slug slugs snail snails caterpillar caterpillars weevil weevils aphids greenfly woodlice earwig earwigs gnats grubs mites',
  'critter critters sciara sciarid sciarids thrips cutworm cutworms',
  'mice mouse rat rats voles mole squirrel squirrels chipmunk chipmunks rabbit rabbits hare hares badger badgers fox deer',
  'possum possums wallaby wallabies groundhog monkey monkeys baboon baboons porcupine roo roos kangaroo kangaroos',
  'rosella cockatoo cockatoos cockie cockies bandicoot bandicoots weka wekas pukeko pukekos guineafowl',
  'gopher gophers raccoon raccoons skunk',
  'bird birds blackbird blackbirds magpie magpies pigeon pigeons hen hens chicken chickens',
  'cat dog puppy kitten goat goats sheep lamb lambs pony donkey pig pigs cow cows toddler kids grandson',
].flatMap((row) => row.split(' '));
